package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/**
 * Whether a point that lies far off a surface stands among its like: a blunder is contradicted by its neighbours, the
 * points of a step, of its foot or its shoulder, lie off alike.
 */
final class Company {
    /** A point has about so many neighbours (our choice: with fewer, two blunders are soon a company). */
    private static final double NEIGHBOURS = 9;

    private static final double NEAREST_METRES = 0.5;
    private static final double FARTHEST_METRES = 1.2;

    /** Points are alike that are off on the same side, and not so many times farther or less far (our choice). */
    private static final double ALIKE = 2.5;

    /** Two blunders often come together, three seldom (our choice). */
    private static final int OTHERS = 2;

    /** ... and of many neighbours so large a share (our choice: at a step a quarter to a third). */
    private static final double SHARE = 0.15;

    private final SurveyPoints points;
    private final PointIndex index;
    private final double[] residuals;
    private final boolean[] within;
    private final double reachMetres;

    /**
     * @param residuals how far each point is off
     * @param within which of the points are not far off
     */
    Company(SurveyPoints points, double[] residuals, boolean[] within) {
        this.points = points;
        this.index = new PointIndex(points);
        this.residuals = residuals;
        this.within = within;
        double[] box = PointIndex.box(points);
        double square = Math.max(1, (box[2] - box[0]) * (box[3] - box[1]));
        double reach = Math.sqrt(NEIGHBOURS * square / (Math.PI * points.count()));
        this.reachMetres = Math.min(Math.max(reach, NEAREST_METRES), FARTHEST_METRES);
    }

    /** Whether a point lies far off, and so do others about it in the same way. */
    boolean has(int point) {
        if (within[point]) {
            return false;
        }
        int[] alike = new int[2];
        index.forEachWithin(points.east(point), points.north(point), reachMetres, (other, dx, dy) -> {
            double ratio = residuals[other] / residuals[point];
            alike[0] += other != point && !within[other] && ratio < ALIKE && ratio > 1 / ALIKE ? 1 : 0;
            alike[1]++;
        });
        return alike[0] >= Math.max(OTHERS, SHARE * alike[1]);
    }

    /** Whether the heights of the points about a point that count reach as high and as low as it lies, or nearly. */
    boolean spans(int point, double roomMetres) {
        double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        index.forEachWithin(points.east(point), points.north(point), reachMetres, (other, dx, dy) -> {
            if (other != point && within[other]) {
                range[0] = Math.min(range[0], points.heightMetres(other));
                range[1] = Math.max(range[1], points.heightMetres(other));
            }
        });
        double height = points.heightMetres(point);
        return height >= range[0] - roomMetres && height <= range[1] + roomMetres;
    }
}
