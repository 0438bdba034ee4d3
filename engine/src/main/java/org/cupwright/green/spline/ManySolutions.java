package org.cupwright.green.spline;

/**
 * Solves A x = b for many right sides at once: rows of unknowns, so that the factor is read but once and the compiler
 * does several right sides together.
 */
final class ManySolutions {
    private static final int BLOCK = BandMatrix.BLOCK;

    private final BandCholesky factor;
    private final BandMatrix upper;

    ManySolutions(BandCholesky factor) {
        this.factor = factor;
        this.upper = factor.upper;
    }

    /**
     * Puts the solutions where the right sides stand.
     *
     * @param x a row for each unknown, a column for each right side
     */
    void solve(double[][] x) {
        for (int top = 0; top < x.length; top += BLOCK) {
            forward(x, top);
        }
        for (int top = x.length - BLOCK; top >= 0; top -= BLOCK) {
            backward(x, top);
        }
    }

    private void forward(double[][] x, int top) {
        int count = x[top].length;
        double[][] u = upper.rows;
        for (int row = top; row < top + BLOCK; row++) {
            for (int before = top; before < row; before++) {
                Rows.subtract(x[row], u[before][upper.slot(row)], x[before], 0, count);
            }
            Rows.divide(x[row], factor.diagonal(row), 0, count);
        }
        for (int row = top + BLOCK; row < upper.end(top); row++) {
            int slot = upper.slot(row);
            double a = u[top][slot];
            double b = u[top + 1][slot];
            double c = u[top + 2][slot];
            double d = u[top + 3][slot];
            Rows.subtract(x[row], a, x[top], b, x[top + 1], c, x[top + 2], d, x[top + 3], 0, count);
        }
    }

    private void backward(double[][] x, int top) {
        int count = x[top].length;
        for (int after = top + BLOCK; after < upper.end(top); after += BLOCK) {
            int slot = upper.slot(after);
            for (int row = top; row < top + BLOCK; row++) {
                double[] u = upper.rows[row];
                double a = u[slot];
                double b = u[slot + 1];
                double c = u[slot + 2];
                double d = u[slot + 3];
                Rows.subtract(x[row], a, x[after], b, x[after + 1], c, x[after + 2], d, x[after + 3], 0, count);
            }
        }
        for (int row = top + BLOCK - 1; row >= top; row--) {
            for (int after = row + 1; after < top + BLOCK; after++) {
                Rows.subtract(x[row], upper.rows[row][upper.slot(after)], x[after], 0, count);
            }
            Rows.divide(x[row], factor.diagonal(row), 0, count);
        }
    }
}
