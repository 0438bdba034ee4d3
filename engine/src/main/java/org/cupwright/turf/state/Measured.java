package org.cupwright.turf.state;

import java.time.LocalDate;

/**
 * A measure of the monthly spot check.
 *
 * @param what what was measured
 * @param hole on which green
 */
public record Measured(What what, String hole, LocalDate day, double millimetres) {
    /** What the ruler is held to. */
    public enum What {
        HOLE_DEPTH,
        CUP_DEPTH,
        PLUG_HEIGHT
    }
}
