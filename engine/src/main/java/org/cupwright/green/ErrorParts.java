package org.cupwright.green;

/**
 * The two parts of a standard error, the squares of which add up to its own.
 *
 * @param own what points tell each by itself: noise, relief, steps
 * @param shared what neighbouring points share of their errors
 */
public record ErrorParts(double own, double shared) {
    /** The parts of a whole of which one is known. */
    public static ErrorParts of(double whole, double own) {
        return new ErrorParts(Math.min(own, whole), Math.sqrt(Math.max(0, whole * whole - own * own)));
    }
}
