package org.cupwright.turf.today;

import org.cupwright.turf.state.Plug;

/**
 * A plug that wants a look.
 *
 * @param reason why
 * @param washAfter the green has diseased ground: it comes last, the cutter is washed after it, and no plug leaves it
 */
public record RecheckItem(String hole, Plug plug, Reason reason, boolean washAfter) {
    /** Why a plug wants a look. */
    public enum Reason {
        DAMAGED,
        HIGH,
        LOW,
        /** Nobody has looked at it since the day it was set. */
        NEVER_SEEN,
        /** By the model's guess it has knit: look first. */
        LOOK_FIRST;

        /** Whether somebody saw that something is wrong with it. */
        public boolean isFault() {
            return this == DAMAGED || this == HIGH || this == LOW;
        }
    }
}
