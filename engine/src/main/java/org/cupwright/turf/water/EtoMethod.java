package org.cupwright.turf.water;

/** How the day's evapotranspiration was computed. */
public enum EtoMethod {
    PENMAN_MONTEITH,
    /** From the temperatures, because humidity, wind or radiation are not known. */
    HARGREAVES
}
