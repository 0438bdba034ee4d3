package org.cupwright.green.surveyed;

import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.policy.Policy;

/**
 * Where a survey says something about the slope.
 *
 * <p>Scattered points: a spot is surveyed when at least 6 points lie within 0.91 m of it, they do not lie on one line,
 * and the spot is not in the middle of an empty circle 1 m wide (our reading of "no gap wider than 1 m"). The nodes of
 * a grid stand further apart than that by design: there the points count within 1.6 cells, and a gap is a missing node.
 *
 * @param withinMetres distance within which points are counted
 * @param leastPoints how many there must be
 * @param nearestMetres the nearest must be no further off
 */
record SurveyCoverage(double withinMetres, int leastPoints, double nearestMetres) {
    /** In cells: wherever a spot lies in a full grid, at least 6 nodes are within it. */
    private static final double GRID_REACH = 1.6;

    /** In cells: the middle of a cell is 0.71 from its nodes. */
    private static final double GRID_NEAREST = 0.75;

    /** Least spread of the points across their best line, as a share of {@link #withinMetres}; half a disc has 0.26. */
    private static final double LEAST_SPREAD = 0.15;

    static SurveyCoverage of(SurveyPoints survey, Policy policy) {
        int least = policy.get(GroundPolicy.LEAST_POINTS_IN_DISC);
        double gap = policy.get(GroundPolicy.WIDEST_GAP_METRES);
        if (survey.gridCellMetres().isPresent()) {
            double cell = survey.gridCellMetres().getAsDouble();
            double within = Math.max(Ground.DISC_RADIUS_METRES, GRID_REACH * cell);
            return new SurveyCoverage(within, least, Math.max(gap / 2, GRID_NEAREST * cell));
        }
        return new SurveyCoverage(Ground.DISC_RADIUS_METRES, least, gap / 2);
    }

    /** The least spread across their best line, m, that points must have to show a plane. */
    double leastSpreadMetres() {
        return LEAST_SPREAD * withinMetres;
    }

    boolean isSurveyed(PointIndex index, double east, double north) {
        Spread spread = new Spread();
        index.forEachWithin(east, north, withinMetres, (point, dx, dy) -> spread.add(dx, dy));
        return spread.count() >= leastPoints
                && spread.nearestMetres() <= nearestMetres
                && spread.leastMetres() >= leastSpreadMetres();
    }
}
