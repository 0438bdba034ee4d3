package org.cupwright.green.spline;

import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.policy.Policy;

/**
 * Whether the points about a spot say anything about its slope: enough of them in the disc, none of the gaps too wide, and not all
 * of them in a line.
 *
 * @param leastPoints points needed in the disc
 * @param farthestNearest how far the nearest point may be, m
 */
record CoverageRule(int leastPoints, double farthestNearest) {
    /** Standard deviation of the points across their longest direction, below which they lie in a line, m; our choice. */
    private static final double LEAST_SPREAD = 0.12;

    static CoverageRule forPoints(Policy policy) {
        return new CoverageRule(
                policy.get(GroundPolicy.LEAST_POINTS_IN_DISC), policy.get(GroundPolicy.WIDEST_GAP_METRES) / 2);
    }

    /** A full grid knows every spot that lies among its points, however few fall into a disc. */
    static CoverageRule forGrid(double cellMetres) {
        return new CoverageRule(1, cellMetres * Math.sqrt(0.5) * 1.01);
    }

    boolean covers(PointIndex index, double east, double north) {
        Moments moments = new Moments();
        index.within(east, north, Ground.DISC_RADIUS_METRES, moments);
        return moments.count >= leastPoints
                && moments.nearest <= farthestNearest
                && (leastPoints == 1 || moments.narrowSpread() >= LEAST_SPREAD);
    }

    private static final class Moments implements PointIndex.Visitor {
        int count;
        double nearest = Double.POSITIVE_INFINITY;
        double x;
        double y;
        double xx;
        double xy;
        double yy;

        @Override
        public void visit(double dx, double dy, int point) {
            count++;
            nearest = Math.min(nearest, Math.hypot(dx, dy));
            x += dx;
            y += dy;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }

        double narrowSpread() {
            double mx = x / count;
            double my = y / count;
            double vx = xx / count - mx * mx;
            double vy = yy / count - my * my;
            double c = xy / count - mx * my;
            double least = (vx + vy) / 2 - Math.hypot((vx - vy) / 2, c);
            return Math.sqrt(Math.max(0, least));
        }
    }
}
