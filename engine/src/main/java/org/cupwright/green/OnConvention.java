package org.cupwright.green;

/** From where "on" is measured; both are common practice, so the course chooses and every sheet says which. */
public enum OnConvention {
    /** From where the line through the position, parallel to the line of play, enters the green. */
    ALONG_CHORD,
    /** Squared off the foremost point of the green, or off its front mark where it has one. */
    SQUARED_OFF_FRONT
}
