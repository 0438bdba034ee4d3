package org.cupwright.turf.today;

import org.cupwright.turf.state.Plug;

/**
 * A plug that wants water.
 *
 * @param reason why it is on the list
 * @param done it was watered today already
 */
public record WateringItem(String hole, Plug plug, Reason reason, boolean done) {
    /** Why a plug is on the list. */
    public enum Reason {
        /** Set today: always watered. */
        NEW_PLUG,
        /** No rain and no irrigation since yesterday. */
        NO_WATER_CAME,
        /** Nobody entered whether it was irrigated, or whether it rained. */
        WATER_UNKNOWN,
        HOT,
        WINDY
    }
}
