package org.cupwright.green.spline;

/**
 * The numbers that steer a fit.
 *
 * @param knotSpacingMetres distance between knots where the points bear it
 * @param stepSpacingMetres distance between knots where the ground steps, if that is less
 * @param penaltyDivisor by how much the penalty of the greatest restricted likelihood is divided
 * @param blunderLimit robust standard deviations beyond which a point is left out
 */
public record FitSettings(
        double knotSpacingMetres, double stepSpacingMetres, double penaltyDivisor, double blunderLimit) {}
