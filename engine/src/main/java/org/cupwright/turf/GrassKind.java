package org.cupwright.turf;

/** The two kinds of grass, by the temperature at which they grow best. */
public enum GrassKind {
    COOL_SEASON,
    WARM_SEASON
}
