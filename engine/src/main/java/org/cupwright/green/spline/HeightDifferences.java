package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/** How well height differences over a metre are known on a fitted spline. */
final class HeightDifferences {
    private static final double APART_METRES = 1;

    /** Every so many cells a spot is looked at: enough for a middle value. */
    private static final int EVERY = 3;

    private HeightDifferences() {}

    /**
     * The middle standard error over the surveyed ground, m; NaN without any.
     *
     * @param variance σ² of the heights
     * @param shared directions of errors that points share
     */
    static double typicalError(
            KnotGrid grid,
            SelectedInverse inverse,
            double variance,
            List<double[]> shared,
            DiscCovariances.Wanted wanted) {
        HeightFunctionals differences = HeightFunctionals.differences(APART_METRES);
        Stencil stencil = Stencil.at(0, 0, differences, grid);
        DoubleStream.Builder variances = DoubleStream.builder();
        for (int i = 0; i < grid.cellsEast(); i += EVERY) {
            for (int j = 0; j < grid.cellsNorth(); j += EVERY) {
                double east = grid.west() + i * grid.spacingMetres();
                double north = grid.south() + j * grid.spacingMetres();
                if (grid.holdsDisc(east, north, APART_METRES) && wanted.at(east, north)) {
                    int corner = grid.index(i, j);
                    double[][] covariance = stencil.covariance(inverse, corner);
                    for (int row = 0; row < 2; row++) {
                        variances.add(variance * covariance[row][row] + squares(stencil, row, corner, shared));
                    }
                }
            }
        }
        double[] sorted = variances.build().toArray();
        Arrays.sort(sorted);
        return sorted.length == 0 ? Double.NaN : Math.sqrt(sorted[sorted.length / 2]);
    }

    private static double squares(Stencil stencil, int row, int corner, List<double[]> shared) {
        double squares = 0;
        for (double[] direction : shared) {
            double share = stencil.apply(row, direction, corner);
            squares += share * share;
        }
        return squares;
    }
}
