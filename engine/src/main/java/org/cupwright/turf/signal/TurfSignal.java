package org.cupwright.turf.signal;

import org.cupwright.message.Message;

/**
 * Something to look at.
 *
 * @param kind what
 * @param about the cutter or the measure it is about
 * @param says the sentence
 */
public record TurfSignal(Kind kind, String about, Message says) {
    /** What to look at. */
    public enum Kind {
        /** Greens in a row from one cutter ran the same way. */
        CHECK_STOP,
        /** A ragged edge. */
        BLADE,
        /** Greens since sharpening. */
        SHARPEN,
        /** Today's stop is not yesterday's. */
        STOP_DIFFERS,
        /** A measure left its usual range. */
        CHART
    }
}
