package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.Sharing;

/**
 * How much the points of a survey share of their errors, as slopes measured on the spot tell.
 *
 * <p>The disagreements of the observations with the fit have the covariance V + f²·S: V that of the fit and of the
 * observations, S what the points share with the amplitude that is set. Before anything is observed f² is taken to be
 * exponentially distributed about 1, which of all distributions with that mean says least; its mean after the
 * disagreements counts. Apart from that the whole survey may be tilted or domed ({@link Trends}).
 */
final class SharedMeasure {
    /** Fewer observations leave the amplitude as it is set (our choice). */
    static final int LEAST_OBSERVATIONS = 5;

    private static final double GRID = 0.05;
    private static final double GREATEST = 4;

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
        this.trends = Trends.of(fitted.equations.grid, slopes, disagreements, sum(own, shared, 1));
    }

    /**
     * What was measured.
     *
     * @param directions of what the points share, the amplitude measured, and of a tilt or dome of the whole survey
     * @param factor amplitude measured over amplitude set
     * @param factorError standard error of the factor; not a number where it was not measured
     * @param trended whether the whole survey is tilted or domed
     */
    record Measured(List<double[]> directions, double factor, double factorError, boolean trended) {
        /** The same in metres. */
        MeasuredSharing of(Sharing set) {
            double sigma = set.sigmaMetres();
            return new MeasuredSharing(set, sigma * factor, sigma * factorError, trended);
        }
    }

    /** @param directions of what the points share, with the amplitude that is set; none: nothing is set */
    static Measured of(FittedSpline fitted, double variance, ObservedSlopes slopes, List<double[]> directions) {
        if (slopes.observations().size() < LEAST_OBSERVATIONS) {
            return new Measured(directions, 1, Double.NaN, false);
        }
        return new SharedMeasure(fitted, variance, slopes, directions).measured(directions);
    }

    private Measured measured(List<double[]> directions) {
        double factor = 1;
        double error = Double.NaN;
        if (!directions.isEmpty()) {
            double[] moments = moments();
            factor = Math.sqrt(moments[1]);
            error = Math.sqrt(Math.max(0, moments[1] - moments[0] * moments[0]));
        }
        List<double[]> all = new ArrayList<>(SharedDirections.times(factor, directions));
        all.addAll(trends);
        return new Measured(all, factor, error, !trends.isEmpty());
    }

    /** Mean of f and of f², by summing over a grid. */
    private double[] moments() {
        double[][] fixed = sum(own, products(trends), 1);
        int count = (int) Math.round(GREATEST / GRID);
        double[] logs = new double[count];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double factor = (i + 0.5) * GRID;
            logs[i] = StrictMath.log(factor) - factor * factor + logLikelihood(sum(fixed, shared, factor * factor));
            most = Math.max(most, logs[i]);
        }
        double[] sums = new double[3];
        for (int i = 0; i < count; i++) {
            double factor = (i + 0.5) * GRID;
            double weight = StrictMath.exp(logs[i] - most);
            sums[0] += weight;
            sums[1] += weight * factor;
            sums[2] += weight * factor * factor;
        }
        return new double[] {sums[1] / sums[0], sums[2] / sums[0]};
    }

    private double logLikelihood(double[][] covariance) {
        BandCholesky factor = SharedError.factor(covariance);
        double[] solved = factor.solve(SharedError.padded(disagreements));
        double square = 0;
        for (int i = 0; i < disagreements.length; i++) {
            square += solved[i] * disagreements[i];
        }
        return -(factor.logDeterminant() + square) / 2;
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

    private static double[][] sum(double[][] one, double[][] other, double times) {
        double[][] sum = new double[one.length][one.length];
        for (int row = 0; row < sum.length; row++) {
            for (int column = 0; column < sum.length; column++) {
                sum[row][column] = one[row][column] + times * other[row][column];
            }
        }
        return sum;
    }
}
