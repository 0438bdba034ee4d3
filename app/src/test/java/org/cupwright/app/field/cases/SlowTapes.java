package org.cupwright.app.field.cases;

/**
 * How well two tapes fix a point, found by pulling them a little longer and shorter and seeing where they then meet,
 * and by turning a line about the point until the spread along it is greatest.
 */
record SlowTapes(double[] at, double[] first, double[] second) {
    private static final double SIGMA = 0.02;
    private static final double LITTLE = 1e-4;

    double angleDegrees() {
        double r = SlowPlane.distance(at, first);
        double s = SlowPlane.distance(at, second);
        double between = SlowPlane.distance(first, second);
        return StrictMath.toDegrees(StrictMath.acos((r * r + s * s - between * between) / (2 * r * s)));
    }

    /** Variances: of x, of y, and between them. */
    private double[] covariance() {
        double[] byFirst = moved(LITTLE, 0);
        double[] bySecond = moved(0, LITTLE);
        double v = SIGMA * SIGMA;
        return new double[] {
            v * (byFirst[0] * byFirst[0] + bySecond[0] * bySecond[0]),
            v * (byFirst[1] * byFirst[1] + bySecond[1] * bySecond[1]),
            v * (byFirst[0] * byFirst[1] + bySecond[0] * bySecond[1])
        };
    }

    /** How far the point goes for each metre that a tape is longer. */
    private double[] moved(double onFirst, double onSecond) {
        double[] more = meet(onFirst, onSecond);
        double[] less = meet(-onFirst, -onSecond);
        double by = 2 * (onFirst + onSecond);
        return new double[] {(more[0] - less[0]) / by, (more[1] - less[1]) / by};
    }

    /** The point where tapes so much longer meet, stepped to from the one where they meet now. */
    private double[] meet(double onFirst, double onSecond) {
        double r = SlowPlane.distance(at, first) + onFirst;
        double s = SlowPlane.distance(at, second) + onSecond;
        double[] point = at.clone();
        for (int i = 0; i < 20; i++) {
            double d = SlowPlane.distance(point, first);
            double e = SlowPlane.distance(point, second);
            double ax = (point[0] - first[0]) / d;
            double ay = (point[1] - first[1]) / d;
            double bx = (point[0] - second[0]) / e;
            double by = (point[1] - second[1]) / e;
            double det = ax * by - ay * bx;
            double p = r - d;
            double q = s - e;
            point[0] += (p * by - q * ay) / det;
            point[1] += (q * ax - p * bx) / det;
        }
        return point;
    }

    double positionError() {
        double[] c = covariance();
        return StrictMath.sqrt(c[0] + c[1]);
    }

    /** Longer axis, shorter axis, and the longer one's direction clockwise from y, degrees from 0 to 180. */
    double[] ellipse() {
        double[] c = covariance();
        double best = 0;
        double step = 1;
        for (double turn = 0; turn < 180; turn += step) {
            best = spread(c, turn) > spread(c, best) ? turn : best;
        }
        for (; step > 1e-9; step /= 2) {
            best = spread(c, best + step) > spread(c, best) ? best + step : best;
            best = spread(c, best - step) > spread(c, best) ? best - step : best;
        }
        double axis = (best + 180) % 180;
        return new double[] {StrictMath.sqrt(spread(c, axis)), StrictMath.sqrt(spread(c, axis + 90)), axis};
    }

    private static double spread(double[] c, double degrees) {
        double x = StrictMath.sin(StrictMath.toRadians(degrees));
        double y = StrictMath.cos(StrictMath.toRadians(degrees));
        return c[0] * x * x + c[1] * y * y + 2 * c[2] * x * y;
    }
}
