package org.cupwright.units;

/** The units in which a reader wants lengths; slopes are percent everywhere. */
public enum UnitSystem {
    /** Metres and millimetres. */
    METRIC,
    /** Feet and inches. */
    IMPERIAL,
    /** Half paces from a pace upwards; what is shorter in metres and millimetres. */
    PACES
}
