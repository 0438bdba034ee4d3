package org.cupwright.green.spline;

import java.util.stream.IntStream;
import org.cupwright.green.SurveyPoints;

/**
 * Whether steps that an even fit shows deserve a fit of their own, on finer knots and with next to no penalty there.
 *
 * <p>They do where the even fit misses them, and where what the other fit gains is not lost again: on a thin survey of
 * a gentle rise it follows the noise of a few points, and its errors say so by half again.
 */
final class StepChoice {
    /** Residuals count no farther than this, standard deviations (our choice): a blunder is no step. */
    private static final double GROSS_SIGMAS = 6;

    /** Fewer points show no step (our choice). */
    private static final int LEAST_AT_STEP = 10;

    /**
     * A fit misses a step when the mean square of its residuals there exceeds the one elsewhere by more than a quarter
     * and by two and a half errors of such a mean (our choice).
     */
    private static final double LEAST_EXCESS = 0.25;

    private static final double EXCESS_ERRORS = 2.5;

    /**
     * How many times the squares by which the even fit misses points at the step that it was not given the other fit's
     * may be (our choice, by what sharp and gentle tiers came to: decision record 37): somewhat more, since
     * it is there for errors that hold rather than for small ones.
     */
    private static final double WORSE_AT_MOST = 1.5;

    private final SurveyPoints points;
    private final Steps found;
    private final FittedSpline even;
    private final double grossMetres;

    StepChoice(SurveyPoints points, Steps found, FittedSpline even) {
        this.points = points;
        this.found = found;
        this.even = even;
        this.grossMetres = GROSS_SIGMAS * sigma(even);
    }

    /** The standard deviation that the median of the absolute residuals stands for when they are normal. */
    private static double sigma(FittedSpline fit) {
        double[] residuals = fit.equations.residuals(fit.coefficients);
        double[] sizes = IntStream.range(0, residuals.length)
                .filter(fit.equations::isKept)
                .mapToDouble(point -> Math.abs(residuals[point]))
                .toArray();
        return 1.4826 * Quantiles.median(sizes);
    }

    private boolean isInMidst(int point) {
        return found.isInMidst(points.east(point), points.north(point));
    }

    private double square(double residual) {
        double size = Math.min(Math.abs(residual), grossMetres);
        return size * size;
    }

    /** Whether the even fit follows the steps as well as the ground elsewhere: then it is kept. */
    boolean isFollowed() {
        double[] residuals = even.equations.residuals(even.coefficients);
        double[] squares = new double[2];
        int[] counts = new int[2];
        for (int i = 0; i < residuals.length; i++) {
            int at = isInMidst(i) ? 1 : 0;
            squares[at] += square(residuals[i]);
            counts[at]++;
        }
        if (counts[1] < LEAST_AT_STEP || counts[0] == 0) {
            return true;
        }
        double ratio = squares[1] / counts[1] / (squares[0] / counts[0]);
        return ratio < 1 + Math.max(LEAST_EXCESS, EXCESS_ERRORS * Math.sqrt(2.0 / counts[1]));
    }

    /** Whether a fit with the steps does not lose more than it gains. */
    boolean isBetter(FittedSpline stepped) {
        return squaresOfUngiven(stepped) < WORSE_AT_MOST * squaresOfUngiven(even);
    }

    /**
     * By how much a fit misses the points at the steps, each as if it had not been given: a residual over what its
     * point leaves free of it (Allen's PRESS, Technometrics 16, 1974).
     */
    private double squaresOfUngiven(FittedSpline fit) {
        double[] residuals = fit.equations.residuals(fit.coefficients);
        SelectedInverse inverse = new SelectedInverse(fit.factor, fit.equations.grid.halfBandwidth(3));
        Leverages leverages = new Leverages(fit.equations, inverse, 0);
        PointBasis basis = fit.equations.basis;
        double squares = 0;
        for (int cell = 0; cell < basis.cells(); cell++) {
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                int point = basis.order[place];
                if (isInMidst(point)) {
                    double free = 1;
                    if (fit.equations.isKept(point)) {
                        leverages.about(cell, place);
                        free -= leverages.with(cell, place);
                    }
                    squares += square(residuals[point] / free);
                }
            }
        }
        return squares;
    }
}
