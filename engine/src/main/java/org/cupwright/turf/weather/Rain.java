package org.cupwright.turf.weather;

/**
 * Rain of a day.
 *
 * @param millimetres what the gauge held, 0 or more
 * @param trace it wetted the gauge but could not be measured
 */
public record Rain(double millimetres, boolean trace) {
    public static final Rain NONE = new Rain(0, false);

    public Rain {
        if (!(millimetres >= 0 && millimetres <= 2000)) {
            throw new IllegalArgumentException("rain of " + millimetres + " mm is outside 0–2000");
        }
        if (trace && millimetres > 0) {
            throw new IllegalArgumentException("rain of " + millimetres + " mm is more than a trace");
        }
    }

    public static Rain of(double millimetres) {
        return new Rain(millimetres, false);
    }
}
