package org.cupwright.green;

/** What the knowledge of a green's ground rests on. */
public enum RestsOn {
    /** Only the edge is known; nothing is known of heights. */
    OUTLINE,
    /** Slopes were read with a level at chosen spots. */
    LEVELS,
    /** A surveyed surface. */
    SURVEY
}
