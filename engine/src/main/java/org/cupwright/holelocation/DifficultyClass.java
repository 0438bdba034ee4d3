package org.cupwright.holelocation;

/** How hard a position plays among the good ground of its own green, by thirds. */
public enum DifficultyClass {
    EASIER,
    MEDIUM,
    HARDER
}
