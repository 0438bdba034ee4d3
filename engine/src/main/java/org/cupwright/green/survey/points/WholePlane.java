package org.cupwright.green.survey.points;

import java.util.Optional;

/** The slope of the one plane that fits all points of a green best: a check of units, not a measurement of the green. */
final class WholePlane {
    private static final int FEWEST_POINTS = 10;

    private WholePlane() {}

    /** Rise over run; empty where the points are few or lie along a line. */
    static Optional<Double> slope(PointCloud points) {
        int n = points.size();
        if (n < FEWEST_POINTS) {
            return Optional.empty();
        }
        double[] mean = mean(points);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xz = 0;
        double yz = 0;
        for (int i = 0; i < n; i++) {
            double x = points.east(i) - mean[0];
            double y = points.north(i) - mean[1];
            double z = points.heightMetres(i) - mean[2];
            xx += x * x;
            xy += x * y;
            yy += y * y;
            xz += x * z;
            yz += y * z;
        }
        double determinant = xx * yy - xy * xy;
        boolean alongALine = determinant < 1e-6 * xx * yy || determinant == 0;
        double east = (yy * xz - xy * yz) / determinant;
        double north = (xx * yz - xy * xz) / determinant;
        return alongALine ? Optional.empty() : Optional.of(Math.hypot(east, north));
    }

    private static double[] mean(PointCloud points) {
        double[] sum = new double[3];
        for (int i = 0; i < points.size(); i++) {
            sum[0] += points.east(i);
            sum[1] += points.north(i);
            sum[2] += points.heightMetres(i);
        }
        int n = points.size();
        return new double[] {sum[0] / n, sum[1] / n, sum[2] / n};
    }
}
