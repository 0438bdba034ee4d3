package org.cupwright.green.spline;

/**
 * The Cholesky factor A = LL' of a banded positive definite matrix, computed in squares of four (dot products, so that
 * a processor's registers are used well; results are the same on every machine). Adding multiples of rows, which the
 * compiler vectorises, was measured at twice the time.
 */
final class BandCholesky {
    private static final int BLOCK = BandMatrix.BLOCK;

    final BandMatrix lower;

    /** Factors the matrix in place: the argument must not be used afterwards. */
    BandCholesky(BandMatrix matrix) {
        this.lower = matrix;
        for (int row = 0; row < matrix.blocks; row++) {
            for (int column = firstBlock(row); column < row; column++) {
                subtractBlock(row, column);
                divide(row, column);
            }
            subtractBlock(row, row);
            factorDiagonal(row);
        }
    }

    private int firstBlock(int row) {
        return Math.max(0, row - lower.blocksBefore);
    }

    private void subtractBlock(int row, int column) {
        subtractProducts(row, BLOCK * column);
        subtractProducts(row, BLOCK * column + 2);
    }

    /** Four rows by two columns: takes off the products of all columns before the column's block. */
    private void subtractProducts(int rowBlock, int column) {
        double[] a = lower.values;
        int stride = lower.stride;
        int from = BLOCK * firstBlock(rowBlock);
        int length = BLOCK * (column / BLOCK) - from;
        int p0 = lower.offset(BLOCK * rowBlock, from);
        int p1 = p0 + stride;
        int p2 = p1 + stride;
        int p3 = p2 + stride;
        int q0 = lower.offset(column, from);
        int q1 = q0 + stride;
        double s00 = 0;
        double s01 = 0;
        double s10 = 0;
        double s11 = 0;
        double s20 = 0;
        double s21 = 0;
        double s30 = 0;
        double s31 = 0;
        for (int k = 0; k < length; k++) {
            double y0 = a[q0 + k];
            double y1 = a[q1 + k];
            double x0 = a[p0 + k];
            double x1 = a[p1 + k];
            double x2 = a[p2 + k];
            double x3 = a[p3 + k];
            s00 += x0 * y0;
            s01 += x0 * y1;
            s10 += x1 * y0;
            s11 += x1 * y1;
            s20 += x2 * y0;
            s21 += x2 * y1;
            s30 += x3 * y0;
            s31 += x3 * y1;
        }
        int at = lower.offset(BLOCK * rowBlock, column);
        a[at] -= s00;
        a[at + 1] -= s01;
        a[at + stride] -= s10;
        a[at + stride + 1] -= s11;
        a[at + 2 * stride] -= s20;
        a[at + 2 * stride + 1] -= s21;
        a[at + 3 * stride] -= s30;
        a[at + 3 * stride + 1] -= s31;
    }

    /** Divides a block from the right by the transposed diagonal block of its column. */
    private void divide(int rowBlock, int columnBlock) {
        double[] a = lower.values;
        for (int r = 0; r < BLOCK; r++) {
            int at = lower.offset(BLOCK * rowBlock + r, BLOCK * columnBlock);
            for (int c = 0; c < BLOCK; c++) {
                int diagonal = lower.offset(BLOCK * columnBlock + c, BLOCK * columnBlock);
                double value = a[at + c];
                for (int k = 0; k < c; k++) {
                    value -= a[at + k] * a[diagonal + k];
                }
                a[at + c] = value / a[diagonal + c];
            }
        }
    }

    private void factorDiagonal(int block) {
        double[] a = lower.values;
        for (int r = 0; r < BLOCK; r++) {
            int row = lower.offset(BLOCK * block + r, BLOCK * block);
            for (int c = 0; c <= r; c++) {
                int column = lower.offset(BLOCK * block + c, BLOCK * block);
                double value = a[row + c];
                for (int k = 0; k < c; k++) {
                    value -= a[row + k] * a[column + k];
                }
                a[row + c] = c < r ? value / a[column + c] : root(value, BLOCK * block + r);
            }
        }
    }

    private static double root(double value, int row) {
        if (!(value > 0)) {
            throw new ArithmeticException("the normal equations are not positive definite at coefficient " + row);
        }
        return Math.sqrt(value);
    }

    /** ln det A. */
    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < lower.order; i++) {
            sum += StrictMath.log(lower.values[lower.offset(i, i)]);
        }
        return 2 * sum;
    }

    /** Solves A x = b; the argument is left as it is. */
    double[] solve(double[] b) {
        double[] x = forward(b);
        double[] a = lower.values;
        for (int i = lower.order - 1; i >= 0; i--) {
            int diagonal = lower.offset(i, i);
            x[i] /= a[diagonal];
            int first = Math.max(0, BLOCK * (i / BLOCK - lower.blocksBefore));
            for (int k = first; k < i; k++) {
                x[k] -= a[diagonal - i + k] * x[i];
            }
        }
        return x;
    }

    private double[] forward(double[] b) {
        double[] x = b.clone();
        double[] a = lower.values;
        for (int i = 0; i < lower.order; i++) {
            int diagonal = lower.offset(i, i);
            int first = Math.max(0, BLOCK * (i / BLOCK - lower.blocksBefore));
            double value = x[i];
            for (int k = first; k < i; k++) {
                value -= a[diagonal - i + k] * x[k];
            }
            x[i] = value / a[diagonal];
        }
        return x;
    }
}
