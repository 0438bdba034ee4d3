package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A fitted spline after slopes were measured on the spot: the normal distribution of its coefficients, conditioned on
 * the observations with their errors.
 *
 * <p>With W the observed functionals, Σ the coefficients' covariance and R the observations', the new mean is
 * c + ΣW'(WΣW'+R)⁻¹(y − Wc) and the covariance loses ΣW'(WΣW'+R)⁻¹WΣ, here kept as a sum of products d d'.
 */
final class Conditioning {
    final double[] coefficients;
    final List<double[]> directions = new ArrayList<>();

    private final List<double[]> weights = new ArrayList<>();
    private final List<Double> observed = new ArrayList<>();
    private final List<Double> variances = new ArrayList<>();

    Conditioning(FittedSpline spline, double variance, double discRadiusMetres, List<SlopeObservation> observations) {
        this.coefficients = spline.coefficients.clone();
        HeightFunctionals disc = HeightFunctionals.overDisc(discRadiusMetres);
        for (SlopeObservation observation : observations) {
            if (spline.equations.grid.holdsDisc(observation.east(), observation.north(), discRadiusMetres)) {
                addRows(observation, disc, spline.equations.grid);
            }
        }
        for (int i = 0; i < weights.size(); i++) {
            take(i, spline.factor, variance);
        }
    }

    private void addRows(SlopeObservation observation, HeightFunctionals disc, KnotGrid grid) {
        double x = grid.cellsFromWest(observation.east());
        double y = grid.cellsFromSouth(observation.north());
        int cellEast = grid.cellEast(x);
        int cellNorth = grid.cellNorth(y);
        Stencil stencil = Stencil.at(x - cellEast, y - cellNorth, disc, grid);
        int corner = grid.index(cellEast, cellNorth);
        weights.add(stencil.spread(HeightFunctionals.GRADIENT_EAST, corner, coefficients.length));
        weights.add(stencil.spread(HeightFunctionals.GRADIENT_NORTH, corner, coefficients.length));
        observed.add(observation.gradientEast());
        observed.add(observation.gradientNorth());
        double square = observation.standardError() * observation.standardError();
        variances.addAll(Arrays.asList(square, square));
    }

    /** Takes in one scalar observation after those before it: a rank-one step of mean and covariance. */
    private void take(int row, BandCholesky factor, double variance) {
        double[] weight = weights.get(row);
        double[] gain = factor.solve(weight);
        for (int i = 0; i < gain.length; i++) {
            gain[i] *= variance;
        }
        for (double[] direction : directions) {
            addTimes(gain, -dot(weight, direction), direction);
        }
        double spread = Math.max(0, dot(weight, gain)) + variances.get(row);
        addTimes(coefficients, (observed.get(row) - dot(weight, coefficients)) / spread, gain);
        double[] direction = new double[gain.length];
        addTimes(direction, 1 / Math.sqrt(spread), gain);
        directions.add(direction);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void addTimes(double[] to, double times, double[] vector) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * vector[i];
        }
    }
}
