package org.cupwright.green.spline;

import java.util.HashMap;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.DiscQuadrature;
import org.cupwright.green.GreenLattice;

/**
 * Coverage and error covariances at every spot of a green's lattice; between spots covariances, which vary slowly, are
 * interpolated.
 */
final class ErrorField {
    /** Numbers kept for a spot: three of the slope, six of its change. */
    private static final int KEPT = 9;

    /** Where they stand in the 5 × 5 covariance. */
    private static final int[] ENTRY = {0, 1, 6, 12, 13, 14, 18, 19, 24};

    private static final double MARGIN = 0.75;

    private final GreenLattice lattice;
    private final float[] numbers;

    private ErrorField(GreenLattice lattice, float[] numbers) {
        this.lattice = lattice;
        this.numbers = numbers;
    }

    static ErrorField over(
            Outline outline,
            Knots knots,
            SelectedInverse inverse,
            DiscQuadrature disc,
            PointIndex index,
            CoverageRule rule,
            double sigma) {
        GreenLattice lattice = GreenLattice.over(outline, MARGIN);
        float[] numbers = new float[KEPT * lattice.size()];
        Map<Long, Pattern> patterns = new HashMap<>();
        for (int spot = 0; spot < lattice.size(); spot++) {
            MapPoint at = lattice.spot(spot);
            boolean near = outline.contains(at) || outline.distanceToEdgeMetres(at) <= 2 * GreenLattice.CELL_METRES;
            if (!near || !rule.covers(index, at.east(), at.north())) {
                numbers[KEPT * spot] = Float.NaN;
                continue;
            }
            double x = knots.along(at.east());
            double y = knots.up(at.north());
            int column = (int) Math.floor(x);
            int row = (int) Math.floor(y);
            double t = x - column;
            double s = y - row;
            long kind = Math.round(1000 * t) * 10_000 + Math.round(1000 * s);
            Pattern pattern = patterns.computeIfAbsent(kind, ignored -> new Pattern(disc, knots.spacing(), t, s));
            double[] covariance = pattern.covariance(knots, inverse, column, row);
            for (int k = 0; k < KEPT; k++) {
                numbers[KEPT * spot + k] = (float) (sigma * sigma * covariance[ENTRY[k]]);
            }
        }
        return new ErrorField(lattice, numbers);
    }

    /** Whether the nearest spot of the lattice is surveyed. */
    boolean covered(MapPoint point) {
        int spot = lattice.nearest(point);
        return spot >= 0 && !Float.isNaN(numbers[KEPT * spot]);
    }

    /** The nine numbers at a covered point: var east, cov, var north; then the upper triangle of the second derivatives'. */
    double[] at(MapPoint point) {
        double x = lattice.columnOf(point.east());
        double y = lattice.rowOf(point.north());
        int column = (int) Math.floor(x);
        int row = (int) Math.floor(y);
        double[] sum = new double[KEPT];
        double weight = 0;
        for (int corner = 0; corner < 4; corner++) {
            int c = column + corner % 2;
            int r = row + corner / 2;
            double w = (corner % 2 == 0 ? 1 - (x - column) : x - column) * (corner / 2 == 0 ? 1 - (y - row) : y - row);
            boolean exists = w > 0 && c >= 0 && r >= 0 && c < lattice.columns() && r < lattice.rows();
            if (exists && !Float.isNaN(numbers[KEPT * (r * lattice.columns() + c)])) {
                for (int k = 0; k < KEPT; k++) {
                    sum[k] += w * numbers[KEPT * (r * lattice.columns() + c) + k];
                }
                weight += w;
            }
        }
        for (int k = 0; k < KEPT; k++) {
            sum[k] /= weight;
        }
        return sum;
    }
}
