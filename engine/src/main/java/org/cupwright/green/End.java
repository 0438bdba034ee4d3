package org.cupwright.green;

/** The end of a green from which a place is measured along the line of play. */
public enum End {
    /** Where play reaches the green: "on" is measured from here. */
    FRONT,
    BACK
}
