package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * Relief that a fit has left in its residuals because it is finer than the knots or weaker than the penalty allows, and
 * what it adds to the errors of what is read over a disc.
 *
 * <p>If the surface were all there is, residuals of two points would hang together by −σ²·b(i)'(B'B+λP)⁻¹b(j) and by
 * nothing else. What they hang together beyond that, as a function of distance, is the covariance of the relief that
 * was missed; the error it makes in a weighted sum of heights is the same sum of the missed relief, so its variance
 * follows from that function, with nothing chosen. It is taken to be the same all over the green and in all directions,
 * and counts only where it stands out from its own error.
 */
final class UnresolvedRelief {
    /**
     * It counts when the change of slope it makes exceeds so many of its own errors (our choice: missing it costs
     * more).
     */
    private static final double ERRORS = 1;

    private static final int[][] ENTRIES = {
        {HeightFunctionals.GRADIENT_EAST, HeightFunctionals.GRADIENT_EAST},
        {HeightFunctionals.EAST_2, HeightFunctionals.EAST_2},
        {HeightFunctionals.EAST_2, HeightFunctionals.NORTH_2},
        {HeightFunctionals.EAST_NORTH, HeightFunctionals.EAST_NORTH}
    };

    private final double[] sums;
    private final double[] counts;
    private final HeightFunctionals disc;

    private UnresolvedRelief(HeightFunctionals disc, ResidualPairs pairs) {
        this.disc = disc;
        this.sums = pairs.sums;
        this.counts = pairs.counts;
    }

    /**
     * What the missed relief adds to the covariances over a disc, as {@link DiscCovariances} orders them; zeros when
     * none stands out.
     *
     * @param inverse wide enough for the disc
     * @param variance σ² of the heights
     */
    static double[] over(HeightFunctionals disc, FittedSpline fitted, SelectedInverse inverse, double variance) {
        int classes = (int) Math.ceil(2 * disc.reachMetres / ResidualPairs.CLASS_METRES);
        int cells = disc.coefficientsApart(fitted.equations.grid.spacingMetres()) - 3;
        UnresolvedRelief relief =
                new UnresolvedRelief(disc, ResidualPairs.of(fitted, inverse, variance, classes, cells));
        double slope = Math.max(0, relief.sumOver(ENTRIES[0]));
        double bend = relief.sumOver(ENTRIES[1]);
        if (bend <= ERRORS * relief.errorOver(ENTRIES[1], variance)) {
            return new double[DiscCovariances.SIZE];
        }
        double mixed = Math.max(0, relief.sumOver(ENTRIES[3]));
        double both = Math.min(bend, Math.max(-bend, relief.sumOver(ENTRIES[2])));
        return new double[] {slope, 0, slope, bend, 0, both, mixed, 0, bend};
    }

    /** For each class of distance, the products of the weights of all pairs of places in the disc. */
    private double[] products(int[] entry) {
        double[] products = new double[sums.length];
        for (int i = 0; i < disc.east.length; i++) {
            for (int j = 0; j < disc.east.length; j++) {
                double distance = Math.hypot(disc.east[i] - disc.east[j], disc.north[i] - disc.north[j]);
                int place = (int) Math.min(sums.length - 1, distance / ResidualPairs.CLASS_METRES);
                products[place] += disc.weights[entry[0]][i] * disc.weights[entry[1]][j];
            }
        }
        return products;
    }

    private double sumOver(int[] entry) {
        double[] products = products(entry);
        double sum = 0;
        for (int i = 0; i < products.length; i++) {
            sum += counts[i] > 0 ? products[i] * sums[i] / counts[i] : 0;
        }
        return sum;
    }

    private double errorOver(int[] entry, double variance) {
        double[] products = products(entry);
        double[] squares = new double[products.length];
        Arrays.setAll(squares, i -> counts[i] > 0 ? products[i] * products[i] * variance * variance / counts[i] : 0);
        return Math.sqrt(Arrays.stream(squares).sum());
    }
}
