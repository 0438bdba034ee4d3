package org.cupwright.holelocation;

/** What all rules together say of a position. */
public enum Verdict {
    PASS,
    CAUTION,
    FAIL,
    /** A gap inside a survey: nothing is said. */
    NOT_SURVEYED
}
