package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;

/**
 * A fitted spline after slopes were measured on the spot: the normal distribution of its coefficients, conditioned on
 * the observations with their errors.
 *
 * <p>With W the observed functionals, Σ the coefficients' covariance and R the observations', the new mean is
 * c + ΣW'(WΣW'+R)⁻¹(y − Wc) and the covariance loses ΣW'(WΣW'+R)⁻¹WΣ, here kept as a sum of products d d'. Σ is that of
 * the fit and the products of what the points share.
 */
final class Conditioning {
    final double[] coefficients;
    final List<double[]> directions = new ArrayList<>();

    private final ObservedSlopes slopes;
    private final List<double[]> shared;

    /** @param shared directions of what the points share, which count as errors besides the fit's own */
    Conditioning(FittedSpline spline, double variance, ObservedSlopes slopes, List<double[]> shared) {
        this.coefficients = spline.coefficients.clone();
        this.slopes = slopes;
        this.shared = shared;
        for (int i = 0; i < slopes.rows(); i++) {
            take(i, spline.factor, variance);
        }
    }

    /** Takes in one scalar observation after those before it: a rank-one step of mean and covariance. */
    private void take(int row, BandCholesky factor, double variance) {
        double[] gain = SharedDirections.times(variance, factor.solve(slopes.weights.get(row)));
        for (double[] direction : shared) {
            addTimes(gain, slopes.of(row, direction), direction);
        }
        for (double[] direction : directions) {
            addTimes(gain, -slopes.of(row, direction), direction);
        }
        double spread = Math.max(0, slopes.of(row, gain)) + slopes.variance(row);
        addTimes(coefficients, slopes.disagreement(row, coefficients) / spread, gain);
        directions.add(SharedDirections.times(1 / Math.sqrt(spread), gain));
    }

    private static void addTimes(double[] to, double times, double[] vector) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * vector[i];
        }
    }
}
