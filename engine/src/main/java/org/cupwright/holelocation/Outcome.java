package org.cupwright.holelocation;

/** What one rule says of a position, from best to worst, {@link #NOT_CHECKED} apart. */
public enum Outcome {
    PASS,
    CAUTION,
    FAIL,
    /** What the rule needs is not known here. */
    NOT_CHECKED
}
