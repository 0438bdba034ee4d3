package org.cupwright.green;

/** The side edge from which a place is measured, as seen from the fairway. */
public enum Side {
    LEFT,
    RIGHT
}
