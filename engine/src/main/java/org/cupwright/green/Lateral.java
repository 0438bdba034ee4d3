package org.cupwright.green;

/** Left, centre or right of a green as seen from the fairway, by thirds of the chord at right angles to play. */
public enum Lateral {
    LEFT,
    CENTRE,
    RIGHT
}
