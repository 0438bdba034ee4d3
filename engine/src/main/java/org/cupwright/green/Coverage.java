package org.cupwright.green;

/** Whether the ground's shape is known at a spot. */
public enum Coverage {
    KNOWN,
    /** A gap inside a survey. */
    NOT_SURVEYED,
    /** Nobody measured here: outline only, or away from the level spots. */
    NOT_MEASURED
}
