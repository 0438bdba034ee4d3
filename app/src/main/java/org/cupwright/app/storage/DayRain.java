package org.cupwright.app.storage;

/** Whether rain is expected during play, and who says so. */
public enum DayRain {
    /** None: somebody said so, or nobody speaks of any. */
    NONE,
    /** Somebody said so. */
    SAID,
    /** Nobody said anything, and the forecast has rain. */
    FORETOLD;

    public boolean expected() {
        return this != NONE;
    }

    /** As somebody says it. */
    public static DayRain said(boolean expected) {
        return expected ? SAID : NONE;
    }
}
