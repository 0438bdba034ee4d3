package org.cupwright.app.storage.training;

/** How somebody did a step, as whoever stood beside saw it. */
public enum HowWell {
    WITH_HELP,
    /** Alone, and well. */
    ALONE,
    /** It is to be done again before it counts. */
    AGAIN
}
