package org.cupwright.roll;

/** How a roll ended. */
public enum RollEnd {
    /** The ball came to rest on the green. */
    REST,
    /** It crossed the green's edge. */
    OFF_GREEN,
    /** It still ran when the time or the path allowed was used up: on a slope above ρ a ball does not stop. */
    RUNNING
}
