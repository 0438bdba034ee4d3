package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** How well height differences over a metre are known on a fitted spline. */
final class HeightDifferences {
    private static final double APART_METRES = 1;

    /** Every so many cells a spot is looked at: enough for a middle value. */
    private static final int EVERY = 3;

    private HeightDifferences() {}

    /**
     * The middle standard error over the surveyed ground, for heights with a standard deviation of 1; NaN without any.
     */
    static double typicalError(KnotGrid grid, SelectedInverse inverse, DiscCovariances.Wanted wanted) {
        HeightFunctionals differences = HeightFunctionals.differences(APART_METRES);
        Stencil stencil = Stencil.at(0, 0, differences, grid);
        DoubleStream.Builder variances = DoubleStream.builder();
        for (int i = 0; i < grid.cellsEast(); i += EVERY) {
            for (int j = 0; j < grid.cellsNorth(); j += EVERY) {
                double east = grid.west() + i * grid.spacingMetres();
                double north = grid.south() + j * grid.spacingMetres();
                if (grid.holdsDisc(east, north, APART_METRES) && wanted.at(east, north)) {
                    double[][] covariance = stencil.covariance(inverse, grid.index(i, j));
                    variances.add(covariance[0][0]).add(covariance[1][1]);
                }
            }
        }
        double[] sorted = variances.build().toArray();
        Arrays.sort(sorted);
        return sorted.length == 0 ? Double.NaN : Math.sqrt(sorted[sorted.length / 2]);
    }
}
