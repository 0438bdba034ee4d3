package org.cupwright.green.spline;

/** Uniform cubic B-splines: the four that are not zero on a cell, at t = 0…1 along it. */
final class CubicBasis {
    private CubicBasis() {}

    /** Coefficients of t⁰…t³ of the four functions, one row a function. */
    static final double[][] POLYNOMIALS = {
        {1 / 6.0, -3 / 6.0, 3 / 6.0, -1 / 6.0},
        {4 / 6.0, 0, -6 / 6.0, 3 / 6.0},
        {1 / 6.0, 3 / 6.0, 3 / 6.0, -3 / 6.0},
        {0, 0, 0, 1 / 6.0}
    };

    static void values(double t, double[] out) {
        for (int i = 0; i < 4; i++) {
            double[] p = POLYNOMIALS[i];
            out[i] = p[0] + t * (p[1] + t * (p[2] + t * p[3]));
        }
    }
}
