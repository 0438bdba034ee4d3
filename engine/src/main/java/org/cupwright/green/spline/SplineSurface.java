package org.cupwright.green.spline;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/**
 * A tensor-product cubic spline as one bicubic polynomial a cell: height and slope are continuous, and so are second derivatives.
 *
 * <p>Outside its knots it goes on as the plane that touches it at the nearest point of their rectangle.
 */
final class SplineSurface implements Surface {
    private final Knots knots;
    private final double meanHeight;

    /** Sixteen numbers a cell, row by row of cells: the factor of tˣ·sʸ stands at 4x + y. */
    private final double[] polynomials;

    SplineSurface(Knots knots, double[] coefficients, double meanHeight) {
        this.knots = knots;
        this.meanHeight = meanHeight;
        this.polynomials = new double[16 * knots.columns() * knots.rows()];
        for (int row = 0; row < knots.rows(); row++) {
            for (int column = 0; column < knots.columns(); column++) {
                fill(column, row, coefficients);
            }
        }
    }

    private void fill(int column, int row, double[] coefficients) {
        int at = 16 * (row * knots.columns() + column);
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                double c = coefficients[knots.index(column + a, row + b)];
                for (int x = 0; x < 4; x++) {
                    for (int y = 0; y < 4; y++) {
                        polynomials[at + 4 * x + y] += c * CubicBasis.POLYNOMIALS[a][x] * CubicBasis.POLYNOMIALS[b][y];
                    }
                }
            }
        }
    }

    @Override
    public void at(double east, double north, Jet out) {
        double along = knots.along(east);
        double up = knots.up(north);
        double x = Math.min(knots.columns(), Math.max(0, along));
        double y = Math.min(knots.rows(), Math.max(0, up));
        int column = knots.cell(x, knots.columns());
        int row = knots.cell(y, knots.rows());
        evaluate(16 * (row * knots.columns() + column), x - column, y - row, out);
        if (x != along || y != up) {
            out.z += (along - x) * knots.spacing() * out.zx + (up - y) * knots.spacing() * out.zy;
            out.zxx = 0;
            out.zxy = 0;
            out.zyy = 0;
        }
    }

    private void evaluate(int at, double t, double s, Jet out) {
        double[] p = polynomials;
        double h = knots.spacing();
        double v0 = p[at] + s * (p[at + 1] + s * (p[at + 2] + s * p[at + 3]));
        double v1 = p[at + 4] + s * (p[at + 5] + s * (p[at + 6] + s * p[at + 7]));
        double v2 = p[at + 8] + s * (p[at + 9] + s * (p[at + 10] + s * p[at + 11]));
        double v3 = p[at + 12] + s * (p[at + 13] + s * (p[at + 14] + s * p[at + 15]));
        double d0 = p[at + 1] + s * (2 * p[at + 2] + 3 * s * p[at + 3]);
        double d1 = p[at + 5] + s * (2 * p[at + 6] + 3 * s * p[at + 7]);
        double d2 = p[at + 9] + s * (2 * p[at + 10] + 3 * s * p[at + 11]);
        double d3 = p[at + 13] + s * (2 * p[at + 14] + 3 * s * p[at + 15]);
        double e0 = 2 * p[at + 2] + 6 * s * p[at + 3];
        double e1 = 2 * p[at + 6] + 6 * s * p[at + 7];
        double e2 = 2 * p[at + 10] + 6 * s * p[at + 11];
        double e3 = 2 * p[at + 14] + 6 * s * p[at + 15];
        out.z = meanHeight + v0 + t * (v1 + t * (v2 + t * v3));
        out.zx = (v1 + t * (2 * v2 + 3 * t * v3)) / h;
        out.zy = (d0 + t * (d1 + t * (d2 + t * d3))) / h;
        out.zxx = (2 * v2 + 6 * t * v3) / (h * h);
        out.zxy = (d1 + t * (2 * d2 + 3 * t * d3)) / (h * h);
        out.zyy = (e0 + t * (e1 + t * (e2 + t * e3))) / (h * h);
    }
}
