package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * What a fit has missed at a step and about it, and what that adds to the errors of what is read over a disc.
 *
 * <p>A step is sharper than the knots: the surface rings about it. The residuals of a disc's points, weighed as the
 * plane and the quadratic over the disc weigh heights, estimate what is missed there. Their squares less what noise
 * alone would make of them, averaged over the spots within a metre, are added to the covariances.
 */
final class StepMisfit {
    /** Misfits of spots so near are averaged, m (our choice: about a disc's radius, along the step and across it). */
    private static final double NEAR_METRES = 1;

    private final PointIndex index;
    private final double[] residuals;
    private final Steps steps;
    private final double radius;
    private final double variance;

    /**
     * @param residuals of the indexed points
     * @param variance σ² of the heights, steps apart
     */
    StepMisfit(PointIndex index, double[] residuals, Steps steps, double radiusMetres, double variance) {
        this.index = index;
        this.residuals = residuals;
        this.steps = steps;
        this.radius = radiusMetres;
        this.variance = variance;
    }

    /** Whether a disc about a spot touches a step. */
    boolean touches(double east, double north) {
        if (steps.at(east, north)) {
            return true;
        }
        for (int i = 0; i < 16; i++) {
            double turn = 2 * Math.PI * i / 16;
            for (double share : new double[] {0.5, 1}) {
                double x = east + share * radius * StrictMath.cos(turn);
                double y = north + share * radius * StrictMath.sin(turn);
                if (steps.at(x, y)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * What is missed of one spot's plane and quadratic.
     *
     * @param values as the residuals show them
     * @param noise variances that the survey's noise alone gives these figures
     * @param own variances from the spread of the very residuals they come from
     * @param rougher how many times the mean square of the residuals is the variance of the heights, at least 1
     */
    record Missed(double[] values, double[] noise, double[] own, double rougher) {}

    /** The residuals about a spot, weighed as {@link HeightFunctionals#overDisc} weighs heights. */
    Missed at(double east, double north) {
        double square = radius * radius;
        double[] sums = new double[5];
        double[] squares = new double[5];
        int[] count = new int[1];
        double[] own = new double[5];
        double[] all = new double[1];
        index.forEachWithin(east, north, radius, (point, dx, dy) -> {
            double bowl = 12 * (dx * dx + dy * dy - square / 2) / (square * square);
            double saddle = 6 * (dx * dx - dy * dy) / (square * square);
            double[] weights = {
                4 * dx / square,
                4 * dy / square,
                2 * (bowl + saddle),
                24 * dx * dy / (square * square),
                2 * (bowl - saddle)
            };
            for (int k = 0; k < 5; k++) {
                sums[k] += weights[k] * residuals[point];
                squares[k] += weights[k] * weights[k];
                own[k] += weights[k] * weights[k] * residuals[point] * residuals[point];
            }
            all[0] += residuals[point] * residuals[point];
            count[0]++;
        });
        int n = Math.max(1, count[0]);
        double free = (double) n / Math.max(1, n - 3);
        return new Missed(
                Arrays.stream(sums).map(sum -> sum / n).toArray(),
                Arrays.stream(squares).map(sum -> variance * sum / n / n).toArray(),
                Arrays.stream(own).map(sum -> free * sum / n / n).toArray(),
                Math.max(1, all[0] / n / variance));
    }

    double nearMetres() {
        return NEAR_METRES;
    }
}
