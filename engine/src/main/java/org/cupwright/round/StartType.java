package org.cupwright.round;

/** From which tees the first groups of a day go. */
public enum StartType {
    /** All from the first tee of a round. */
    FIRST_TEE,
    /** At one time from the first tee and from the tee half way round. */
    TWO_TEES,
    /** Every nine is played for itself, from its own first tee, at its own time. */
    SPLIT_NINES,
    /** From every tee at one time. */
    SHOTGUN
}
