package org.cupwright.green.spline;

import java.util.Optional;

/**
 * A symmetric matrix with all its non-zero entries within a band about the diagonal; the upper half is kept, row by row.
 *
 * <p>No library at hand factors and selectively inverts band matrices, hence this one. Its inner loops add multiples of one row to
 * another, which the compiler turns into vector instructions; sums of products it would not.
 */
final class Band {
    private final int size;
    private final int width;

    /** Entry (i, j) with i ≤ j ≤ i + width stands at i·(width + 1) + j − i. */
    private final double[] upper;

    Band(int size, int width) {
        this(size, width, new double[size * (width + 1)]);
    }

    private Band(int size, int width, double[] upper) {
        this.size = size;
        this.width = width;
        this.upper = upper;
    }

    int size() {
        return size;
    }

    int width() {
        return width;
    }

    double get(int i, int j) {
        int row = Math.min(i, j);
        return upper[row * (width + 1) + Math.max(i, j) - row];
    }

    void add(int i, int j, double value) {
        int row = Math.min(i, j);
        upper[row * (width + 1) + Math.max(i, j) - row] += value;
    }

    /** This matrix plus a multiple of another of the same shape. */
    Band plus(double factor, Band other) {
        double[] sum = new double[upper.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = upper[i] + factor * other.upper[i];
        }
        return new Band(size, width, sum);
    }

    /** The Cholesky factor; empty when the matrix is not safely positive definite. */
    Optional<BandCholesky> cholesky() {
        double[] factor = upper.clone();
        int stride = width + 1;
        for (int i = 0; i < size; i++) {
            int row = i * stride;
            double pivot = factor[row];
            if (!(pivot > 1e-13 * upper[row])) {
                return Optional.empty();
            }
            int last = Math.min(width, size - 1 - i);
            double scale = 1 / Math.sqrt(pivot);
            for (int k = 0; k <= last; k++) {
                factor[row + k] *= scale;
            }
            for (int k = 1; k <= last; k++) {
                subtract(factor, row + k, (i + k) * stride, last - k, factor[row + k]);
            }
        }
        return Optional.of(new BandCholesky(size, width, factor));
    }

    private static void subtract(double[] factor, int from, int to, int last, double times) {
        if (times != 0) {
            for (int j = 0; j <= last; j++) {
                factor[to + j] -= times * factor[from + j];
            }
        }
    }
}
