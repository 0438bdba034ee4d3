package org.cupwright.green.resurvey;

/**
 * A volume of soil.
 *
 * @param cubicMetres the volume
 * @param standardErrorCubicMetres from the two surveys' own errors; a difference between their datums is not in it
 */
public record Volume(double cubicMetres, double standardErrorCubicMetres) {}
