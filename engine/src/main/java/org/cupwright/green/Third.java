package org.cupwright.green;

/** Front, middle or back of a green, by thirds of the chord along which "on" is measured. */
public enum Third {
    FRONT,
    MIDDLE,
    BACK
}
