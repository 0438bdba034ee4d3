package org.cupwright.green.spline;

import java.util.Optional;

/**
 * A symmetric matrix with all its non-zero entries within a band about the diagonal; the lower half is kept, row by row.
 *
 * <p>No library at hand factors and selectively inverts band matrices, hence this one.
 */
final class Band {
    final int size;
    final int width;

    /** Entry (i, j) with i − width ≤ j ≤ i stands at i·(width + 1) + (j − i + width). */
    final double[] lower;

    Band(int size, int width) {
        this.size = size;
        this.width = width;
        this.lower = new double[size * (width + 1)];
    }

    void add(int i, int j, double value) {
        int row = Math.max(i, j);
        int column = Math.min(i, j);
        lower[row * (width + 1) + column - row + width] += value;
    }

    /** This matrix plus a multiple of another of the same shape. */
    Band plus(double factor, Band other) {
        Band sum = new Band(size, width);
        for (int i = 0; i < lower.length; i++) {
            sum.lower[i] = lower[i] + factor * other.lower[i];
        }
        return sum;
    }

    double[] times(double[] x) {
        double[] y = new double[size];
        for (int i = 0; i < size; i++) {
            int first = Math.max(0, i - width);
            int at = i * (width + 1) + first - i + width;
            double sum = 0;
            for (int j = first; j < i; j++, at++) {
                sum += lower[at] * x[j];
                y[j] += lower[at] * x[i];
            }
            y[i] += sum + lower[at] * x[i];
        }
        return y;
    }

    /** The Cholesky factor; empty when the matrix is not safely positive definite. */
    Optional<BandCholesky> cholesky() {
        double[] factor = lower.clone();
        int stride = width + 1;
        for (int i = 0; i < size; i++) {
            int first = Math.max(0, i - width);
            int row = i * stride + width - i;
            double before = factor[row + i];
            for (int j = first; j <= i; j++) {
                int other = j * stride + width - j;
                int from = Math.max(first, j - width);
                double sum = factor[row + j];
                for (int k = from; k < j; k++) {
                    sum -= factor[row + k] * factor[other + k];
                }
                if (j < i) {
                    factor[row + j] = sum / factor[other + j];
                } else if (sum > 1e-13 * before) {
                    factor[row + i] = Math.sqrt(sum);
                } else {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new BandCholesky(size, width, factor));
    }
}
