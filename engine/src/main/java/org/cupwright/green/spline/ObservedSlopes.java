package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;

/** Slopes measured on the spot as combinations of a spline's coefficients: two rows an observation, east and north. */
final class ObservedSlopes {
    final int length;
    final List<double[]> weights = new ArrayList<>();
    private final List<Double> observed = new ArrayList<>();
    private final List<Double> variances = new ArrayList<>();
    private final List<SlopeObservation> observations = new ArrayList<>();

    /** Those whose disc lies on the knots. */
    ObservedSlopes(FittedSpline fitted, double discRadiusMetres, List<SlopeObservation> all) {
        KnotGrid grid = fitted.equations.grid;
        this.length = fitted.coefficients.length;
        HeightFunctionals disc = HeightFunctionals.overDisc(discRadiusMetres);
        for (SlopeObservation observation : all) {
            if (grid.holdsDisc(observation.east(), observation.north(), discRadiusMetres)) {
                add(observation, disc, grid);
            }
        }
    }

    private void add(SlopeObservation observation, HeightFunctionals disc, KnotGrid grid) {
        double x = grid.cellsFromWest(observation.east());
        double y = grid.cellsFromSouth(observation.north());
        int cellEast = grid.cellEast(x);
        int cellNorth = grid.cellNorth(y);
        Stencil stencil = Stencil.at(x - cellEast, y - cellNorth, disc, grid);
        int corner = grid.index(cellEast, cellNorth);
        weights.add(stencil.spread(HeightFunctionals.GRADIENT_EAST, corner, length));
        weights.add(stencil.spread(HeightFunctionals.GRADIENT_NORTH, corner, length));
        observed.add(observation.gradientEast());
        observed.add(observation.gradientNorth());
        double square = observation.standardError() * observation.standardError();
        variances.addAll(List.of(square, square));
        observations.add(observation);
    }

    /** Two for each observation. */
    int rows() {
        return weights.size();
    }

    List<SlopeObservation> observations() {
        return observations;
    }

    double variance(int row) {
        return variances.get(row);
    }

    /** What was observed less what the coefficients say. */
    double disagreement(int row, double[] coefficients) {
        return observed.get(row) - of(row, coefficients);
    }

    /** One row of what coefficients, or a direction among them, come to. */
    double of(int row, double[] coefficients) {
        return dot(weights.get(row), coefficients);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
