package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * The Cholesky factor A = U'U of a banded positive definite matrix. Four rows at a time are taken off all rows that
 * they reach, so that the compiler can do several entries at once; results are the same on every machine.
 */
final class BandCholesky {
    private static final int BLOCK = BandMatrix.BLOCK;

    final BandMatrix upper;

    /** Factors the matrix in place: the argument must not be used afterwards. */
    BandCholesky(BandMatrix matrix) {
        this.upper = matrix;
        for (int top = 0; top < matrix.length; top += BLOCK) {
            for (int row = top; row < top + BLOCK; row++) {
                finish(top, row);
            }
            for (int row = top + BLOCK; row < matrix.end(top); row++) {
                subtract(matrix.rows[row], top, matrix.slot(row), row, matrix.end(top));
            }
        }
    }

    /** Takes the rows of its block before it off a row and divides it by its pivot's root. */
    private void finish(int top, int row) {
        double[] target = upper.rows[row];
        int slot = upper.slot(row);
        int end = slot + upper.end(top) - row;
        for (int before = top; before < row; before++) {
            double[] one = upper.rows[before];
            Rows.subtract(target, one[slot], one, slot, Math.min(end, upper.width));
            Rows.subtract(target, one[slot], one, 0, end - upper.width);
        }
        double root = root(target[slot], row);
        Rows.divide(target, root, slot, Math.min(end, upper.width));
        Rows.divide(target, root, 0, end - upper.width);
    }

    /** Takes four rows times their entries of one column off a target, over the columns from one to another. */
    private void subtract(double[] target, int top, int slot, int fromColumn, int toColumn) {
        double[] one = upper.rows[top];
        double[] two = upper.rows[top + 1];
        double[] three = upper.rows[top + 2];
        double[] four = upper.rows[top + 3];
        double a = one[slot];
        double b = two[slot];
        double c = three[slot];
        double d = four[slot];
        if (a == 0 && b == 0 && c == 0 && d == 0) {
            return;
        }
        int from = upper.slot(fromColumn);
        int to = from + toColumn - fromColumn;
        Rows.subtract(target, a, one, b, two, c, three, d, four, from, Math.min(to, upper.width));
        Rows.subtract(target, a, one, b, two, c, three, d, four, 0, to - upper.width);
    }

    private static double root(double value, int row) {
        if (!(value > 0)) {
            throw new ArithmeticException("the normal equations are not positive definite at coefficient " + row);
        }
        return Math.sqrt(value);
    }

    double diagonal(int row) {
        return upper.rows[row][upper.slot(row)];
    }

    /** ln det A. */
    double logDeterminant() {
        double sum = 0;
        for (int row = 0; row < upper.order; row++) {
            sum += StrictMath.log(diagonal(row));
        }
        return 2 * sum;
    }

    /** Solves A x = b; the argument is left as it is. */
    double[] solve(double[] b) {
        double[] x = Arrays.copyOf(b, upper.length);
        double[] window = Arrays.copyOf(x, upper.width);
        for (int top = 0; top < x.length; top += BLOCK) {
            forward(top, x, window);
        }
        for (int top = x.length - BLOCK; top >= 0; top -= BLOCK) {
            backward(top, x, window);
        }
        return x;
    }

    /** @param window what is left of the right side, over the columns that the block reaches */
    private void forward(int top, double[] x, double[] window) {
        int slot = upper.slot(top);
        for (int row = 0; row < BLOCK; row++) {
            double value = window[slot + row];
            for (int before = 0; before < row; before++) {
                value -= upper.rows[top + before][slot + row] * x[top + before];
            }
            x[top + row] = value / diagonal(top + row);
        }
        int end = slot + upper.end(top) - top;
        takeOff(top, x, window, slot + BLOCK, Math.min(end, upper.width));
        takeOff(top, x, window, 0, end - upper.width);
        int next = top + upper.width;
        for (int row = 0; row < BLOCK && next + row < x.length; row++) {
            window[slot + row] = x[next + row];
        }
    }

    private void takeOff(int top, double[] x, double[] window, int from, int to) {
        double[][] u = upper.rows;
        Rows.subtract(
                window,
                x[top],
                u[top],
                x[top + 1],
                u[top + 1],
                x[top + 2],
                u[top + 2],
                x[top + 3],
                u[top + 3],
                from,
                to);
    }

    /** @param window solutions over the columns that the block reaches */
    private void backward(int top, double[] x, double[] window) {
        double[] sums = new double[BLOCK];
        int slot = upper.slot(top);
        int end = slot + upper.end(top) - top;
        addProducts(top, window, slot + BLOCK, Math.min(end, upper.width), sums);
        addProducts(top, window, 0, end - upper.width, sums);
        for (int row = BLOCK - 1; row >= 0; row--) {
            double value = x[top + row] - sums[row];
            for (int after = row + 1; after < BLOCK; after++) {
                value -= upper.rows[top + row][slot + after] * window[slot + after];
            }
            x[top + row] = value / diagonal(top + row);
            window[slot + row] = x[top + row];
        }
    }

    private void addProducts(int top, double[] window, int from, int to, double[] sums) {
        double[] one = upper.rows[top];
        double[] two = upper.rows[top + 1];
        double[] three = upper.rows[top + 2];
        double[] four = upper.rows[top + 3];
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        for (int k = from; k < to; k++) {
            a += one[k] * window[k];
            b += two[k] * window[k];
            c += three[k] * window[k];
            d += four[k] * window[k];
        }
        sums[0] += a;
        sums[1] += b;
        sums[2] += c;
        sums[3] += d;
    }
}
