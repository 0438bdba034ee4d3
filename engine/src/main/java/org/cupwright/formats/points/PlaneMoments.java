package org.cupwright.formats.points;

import java.util.OptionalDouble;

/** Sums over points from which the slope of the plane that fits them best follows. */
final class PlaneMoments {
    private static final int FEWEST_POINTS = 10;

    private int count;
    private double x;
    private double y;
    private double z;
    private double xx;
    private double xy;
    private double yy;
    private double xz;
    private double yz;

    /** Adds a point, counted from one near all of them so that nothing is lost to rounding. */
    void add(double east, double north, double height) {
        count++;
        x += east;
        y += north;
        z += height;
        xx += east * east;
        xy += east * north;
        yy += north * north;
        xz += east * height;
        yz += north * height;
    }

    /** Rise over run; empty where the points are few or lie along a line. */
    OptionalDouble slope() {
        if (count < FEWEST_POINTS) {
            return OptionalDouble.empty();
        }
        double eastSquares = xx - x * x / count;
        double northSquares = yy - y * y / count;
        double mixed = xy - x * y / count;
        double determinant = eastSquares * northSquares - mixed * mixed;
        if (!(determinant > 1e-6 * eastSquares * northSquares)) {
            return OptionalDouble.empty();
        }
        double eastHeights = xz - x * z / count;
        double northHeights = yz - y * z / count;
        double east = (northSquares * eastHeights - mixed * northHeights) / determinant;
        double north = (eastSquares * northHeights - mixed * eastHeights) / determinant;
        return OptionalDouble.of(Math.hypot(east, north));
    }
}
