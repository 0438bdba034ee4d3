package org.cupwright.green.spline;

import java.util.Random;
import org.cupwright.green.Surface;

/**
 * Ground drawn from what the spline takes for granted: second differences of its coefficients are independent and
 * normal.
 */
public final class PriorSurface {
    /** Holds plane and twist, which the prior leaves free, to some percent of slope. */
    private static final double HOLD = 1e-4;

    private PriorSurface() {}

    /**
     * A surface over a square about the origin, on knots of 0.5 m.
     *
     * @param scaleMetres standard deviation of a second difference
     */
    public static Surface drawn(long seed, double halfMetres, double scaleMetres) {
        Random random = new Random(seed);
        KnotGrid grid = KnotGrid.covering(-halfMetres, -halfMetres, halfMetres, halfMetres, 0.5);
        BandMatrix matrix = new BandMatrix(grid.coefficients(), grid.halfBandwidth(3));
        new DifferencePenalty(grid).addTo(matrix, 1);
        double[] right = new double[matrix.length];
        for (int i = 0; i < matrix.order; i++) {
            matrix.add(i, i, HOLD);
            right[i] = Math.sqrt(HOLD) * random.nextGaussian();
        }
        addDifferences(grid, random, right);
        double[] coefficients = new BandCholesky(matrix).solve(right);
        for (int i = 0; i < coefficients.length; i++) {
            coefficients[i] *= scaleMetres;
        }
        return new PolynomialSurface(grid, coefficients, 0);
    }

    /** Adds D'z with z standard normal: its covariance is the penalty's matrix. */
    private static void addDifferences(KnotGrid grid, Random random, double[] right) {
        for (int i = 0; i < grid.coefficientsEast(); i++) {
            for (int j = 0; j < grid.coefficientsNorth(); j++) {
                int first = grid.index(i, j);
                if (i + 2 < grid.coefficientsEast()) {
                    addDifference(right, first, grid.strideEast(), random.nextGaussian());
                }
                if (j + 2 < grid.coefficientsNorth()) {
                    addDifference(right, first, grid.strideNorth(), random.nextGaussian());
                }
            }
        }
    }

    private static void addDifference(double[] right, int first, int step, double z) {
        right[first] += z;
        right[first + step] -= 2 * z;
        right[first + 2 * step] += z;
    }
}
