package org.cupwright.green.spline;

/**
 * What a fit came to.
 *
 * @param pointsUsed points that counted
 * @param knotSpacingMetres distance between knots
 * @param lambda the penalty in use, after the division
 * @param sigmaMetres standard deviation of a point's height: of the residuals, or the greater one that came with a grid
 * @param effectiveParameters parameters the fit has used up
 * @param heightStandardErrorMetres typical standard error of the height difference between two places a metre apart
 */
public record SplineSummary(
        int pointsUsed,
        double knotSpacingMetres,
        double lambda,
        double sigmaMetres,
        double effectiveParameters,
        double heightStandardErrorMetres) {
    double variance() {
        return sigmaMetres * sigmaMetres;
    }
}
