package org.cupwright.green.spline;

/**
 * Which share of what residuals show about a step was truly missed by the fit, and is not noise.
 *
 * <p>Squares of a few spots are no better known than few degrees of freedom allow: squares as great as noise explains
 * do not mean that nothing was missed. The whole variance T is taken to be noise and what was missed, N ≤ T, its
 * logarithm equally likely anywhere above; after the squares S its inverse has a gamma distribution, cut off at 1/N,
 * and 1 − N·E(1/T) is the share. Far above noise that is 1 − N/S.
 */
final class MissedShare {
    /** Half the degrees of freedom of the spots within a metre: about two of them are independent (our choice). */
    static final int SLOPE_SHAPE = 2;

    static final int BEND_SHAPE = 3;

    private MissedShare() {}

    /** Beyond this ratio the cut at 1/N takes nothing off worth a digit. */
    private static final double CUT_MATTERS = 40;

    /**
     * @param shape half the degrees of freedom
     * @param squares sum of the squares that residuals show
     * @param noise what noise makes of it, above 0
     */
    static double of(int shape, double squares, double noise) {
        double ratio = shape * squares / noise;
        if (ratio > CUT_MATTERS) {
            return 1 - shape / ratio;
        }
        // E(1/T) has P(shape + 1, ratio) / P(shape, ratio) in it, incomplete gamma functions: as one series.
        double term = 1.0 / (shape + 1);
        double sum = 0;
        for (int k = 2; term > 1e-16 * sum; k++) {
            sum += term;
            term *= ratio / (shape + k);
        }
        return 1 - shape * sum / (1 + ratio * sum);
    }

    /** By how many times the squares fall short of what noise explains: as much can have been missed. */
    static double shortfall(double squares, double noise) {
        return squares > 0 ? Math.max(1, noise / squares) : 1;
    }
}
