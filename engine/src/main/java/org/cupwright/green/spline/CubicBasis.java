package org.cupwright.green.spline;

/** The four uniform cubic B-splines that are not zero on a cell. */
final class CubicBasis {
    /** Row a holds the factors of u^a in the four splines on one cell, 0 ≤ u ≤ 1. */
    static final double[][] POWERS = {
        {1.0 / 6, 4.0 / 6, 1.0 / 6, 0}, {-0.5, 0, 0.5, 0}, {0.5, -1, 0.5, 0}, {-1.0 / 6, 0.5, -0.5, 1.0 / 6}
    };

    private CubicBasis() {}

    /** Values of the four splines at the distance u from the cell's start, in cells. */
    static void values(double u, double[] out) {
        values(u, out, 0);
    }

    static void values(double u, double[] out, int at) {
        double rest = 1 - u;
        out[at] = rest * rest * rest / 6;
        out[at + 1] = (4 + u * u * (3 * u - 6)) / 6;
        out[at + 2] = (4 + rest * rest * (3 * rest - 6)) / 6;
        out[at + 3] = u * u * u / 6;
    }
}
