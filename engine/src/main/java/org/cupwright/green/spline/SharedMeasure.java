package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.green.MeasuredSharing;

/**
 * How much the points of a survey share of their errors, as slopes measured on the spot tell.
 *
 * <p>The disagreements of the observations with the fit have the covariance V + f²·S: V that of the fit and of the
 * observations, S what the points share with the amplitude that is set, or that strips of the survey have measured.
 * The mean of f² after the disagreements counts ({@link FactorLikelihood}). Apart from that the whole survey may be
 * tilted or domed ({@link Trends}).
 */
final class SharedMeasure {
    private final ObservedSlopes slopes;
    private final double[] disagreements;
    private final double[][] own;
    private final double[][] shared;
    private final List<double[]> trends;

    private SharedMeasure(FittedSpline fitted, double variance, ObservedSlopes slopes, List<double[]> directions) {
        this.slopes = slopes;
        this.disagreements = new double[slopes.rows()];
        for (int row = 0; row < disagreements.length; row++) {
            disagreements[row] = slopes.disagreement(row, fitted.coefficients);
        }
        this.own = own(fitted, variance);
        this.shared = products(directions);
        this.trends = Trends.of(fitted.equations.grid, slopes, disagreements, FactorLikelihood.sum(own, shared, 1));
    }

    /**
     * What was measured.
     *
     * @param directions of what the points share, the amplitude measured, and of a tilt or dome of the whole survey
     * @param sharing how much they share, and how that is known
     */
    record Measured(List<double[]> directions, MeasuredSharing sharing) {}

    /**
     * @param directions of what the points share before; none: nothing
     * @param before how much that is
     */
    static Measured of(
            FittedSpline fitted,
            double variance,
            ObservedSlopes slopes,
            List<double[]> directions,
            MeasuredSharing before) {
        if (slopes.observations().size() < FactorLikelihood.LEAST_SPOTS) {
            return new Measured(directions, before);
        }
        return new SharedMeasure(fitted, variance, slopes, directions).measured(directions, before);
    }

    private Measured measured(List<double[]> directions, MeasuredSharing before) {
        double factor = 1;
        double error = Double.NaN;
        if (!directions.isEmpty()) {
            double[][] fixed = FactorLikelihood.sum(own, products(trends), 1);
            FactorPosterior posterior =
                    FactorLikelihood.of(disagreements, fixed, shared).after(FactorPrior.gamma(before.shape()));
            factor = posterior.factor();
            error = posterior.errorOf(factor);
        }
        List<double[]> all = new ArrayList<>(SharedDirections.times(factor, directions));
        all.addAll(trends);
        return new Measured(all, before.withReadings(factor, error, !trends.isEmpty()));
    }

    private double[][] own(FittedSpline fitted, double variance) {
        int rows = slopes.rows();
        double[][] covariance = new double[rows][rows];
        for (int column = 0; column < rows; column++) {
            double[] gain = fitted.factor.solve(slopes.weights.get(column));
            for (int row = 0; row < rows; row++) {
                covariance[row][column] = variance * slopes.of(row, gain);
            }
            covariance[column][column] += slopes.variance(column);
        }
        return covariance;
    }

    private double[][] products(List<double[]> directions) {
        int rows = slopes.rows();
        double[][] covariance = new double[rows][rows];
        for (double[] direction : directions) {
            double[] values = new double[rows];
            for (int row = 0; row < rows; row++) {
                values[row] = slopes.of(row, direction);
            }
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < rows; column++) {
                    covariance[row][column] += values[row] * values[column];
                }
            }
        }
        return covariance;
    }
}
