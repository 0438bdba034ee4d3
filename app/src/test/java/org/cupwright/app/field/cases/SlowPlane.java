package org.cupwright.app.field.cases;

import java.util.ArrayList;
import java.util.List;

/**
 * Geometry done slowly, by walking and halving: nothing of it is shared with what it is held against. Rings of corners,
 * the first one the edge, others bunkers within it.
 */
final class SlowPlane {
    private static final double STRIDE = 0.02;
    private static final int HALVINGS = 60;

    private SlowPlane() {}

    /**
     * Whether a point lies on the green: a line of sight in an odd direction crosses the edge an odd number of times.
     */
    static boolean inside(double[][][] rings, double x, double y) {
        double farX = x + 1000 * StrictMath.sin(0.7312);
        double farY = y + 1000 * StrictMath.cos(0.7312);
        boolean inside = false;
        for (double[][] ring : rings) {
            for (int i = 0; i < ring.length; i++) {
                double[] a = ring[i];
                double[] b = ring[(i + 1) % ring.length];
                boolean parted = turn(x, y, farX, farY, a) != turn(x, y, farX, farY, b);
                boolean crossing = left(a, b, x, y) != left(a, b, farX, farY);
                inside ^= parted && crossing;
            }
        }
        return inside;
    }

    private static boolean turn(double x, double y, double u, double v, double[] point) {
        return (u - x) * (point[1] - y) - (v - y) * (point[0] - x) > 0;
    }

    private static boolean left(double[] a, double[] b, double x, double y) {
        return turn(a[0], a[1], b[0], b[1], new double[] {x, y});
    }

    /** How far one walks from a point of the green until its edge is reached; NaN where strides might step over it. */
    static double toEdge(double[][][] rings, double x, double y, double dx, double dy) {
        double far = stride(rings, x, y, dx, dy, STRIDE);
        double check = stride(rings, x, y, dx, dy, STRIDE / 3.1);
        return Math.abs(far - check) < 1e-6 ? far : Double.NaN;
    }

    private static double stride(double[][][] rings, double x, double y, double dx, double dy, double by) {
        double within = 0;
        while (inside(rings, x + (within + by) * dx, y + (within + by) * dy)) {
            within += by;
        }
        double beyond = within + by;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (within + beyond) / 2;
            if (inside(rings, x + middle * dx, y + middle * dy)) {
                within = middle;
            } else {
                beyond = middle;
            }
        }
        return within;
    }

    /** The middle of the ground: the edge's triangles about its first corner, less those of the bunkers. */
    static double[] middle(double[][][] rings) {
        double[] origin = rings[0][0];
        double area = 0;
        double x = 0;
        double y = 0;
        for (int r = 0; r < rings.length; r++) {
            double[] sums = triangles(rings[r], origin);
            double sign = (r == 0 ? 1 : -1) * Math.signum(sums[0]);
            area += sign * sums[0];
            x += sign * sums[1];
            y += sign * sums[2];
        }
        return new double[] {origin[0] + x / area, origin[1] + y / area};
    }

    private static double[] triangles(double[][] ring, double[] origin) {
        double[] sums = new double[3];
        for (int i = 0; i < ring.length; i++) {
            double ax = ring[i][0] - origin[0];
            double ay = ring[i][1] - origin[1];
            double bx = ring[(i + 1) % ring.length][0] - origin[0];
            double by = ring[(i + 1) % ring.length][1] - origin[1];
            double area = (ax * by - bx * ay) / 2;
            sums[0] += area;
            sums[1] += area * (ax + bx) / 3;
            sums[2] += area * (ay + by) / 3;
        }
        return sums;
    }

    /** Where two circles meet: one is walked round, and where the other one is passed it is looked at closely. */
    static List<double[]> meetings(double[] a, double r, double[] b, double s) {
        List<double[]> found = new ArrayList<>();
        int strides = 7200;
        for (int i = 0; i < strides; i++) {
            double from = 2 * Math.PI * i / strides;
            double to = 2 * Math.PI * (i + 1) / strides;
            boolean before = beyond(a, r, b, s, from);
            if (before != beyond(a, r, b, s, to)) {
                for (int j = 0; j < HALVINGS; j++) {
                    double middle = (from + to) / 2;
                    if (beyond(a, r, b, s, middle) == before) {
                        from = middle;
                    } else {
                        to = middle;
                    }
                }
                found.add(on(a, r, from));
            }
        }
        return found;
    }

    private static double[] on(double[] a, double r, double turn) {
        return new double[] {a[0] + r * StrictMath.sin(turn), a[1] + r * StrictMath.cos(turn)};
    }

    private static boolean beyond(double[] a, double r, double[] b, double s, double turn) {
        return distance(on(a, r, turn), b) > s;
    }

    static double distance(double[] a, double[] b) {
        return StrictMath.hypot(a[0] - b[0], a[1] - b[1]);
    }

    /** A point of the map in a frame: metres to the right of a middle and on along a heading. */
    static double[] inFrame(double[] point, double[] middle, double degrees) {
        double turn = StrictMath.toRadians(degrees);
        double away = distance(point, middle);
        double bearing = StrictMath.atan2(point[0] - middle[0], point[1] - middle[1]) - turn;
        return new double[] {away * StrictMath.sin(bearing), away * StrictMath.cos(bearing)};
    }
}
