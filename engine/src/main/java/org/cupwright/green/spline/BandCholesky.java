package org.cupwright.green.spline;

/** The lower Cholesky factor L of a band matrix A = LLᵀ, kept as {@link Band} keeps its rows. */
final class BandCholesky {
    private final int size;
    private final int width;
    private final double[] factor;

    BandCholesky(int size, int width, double[] factor) {
        this.size = size;
        this.width = width;
        this.factor = factor;
    }

    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += StrictMath.log(factor[i * (width + 1) + width]);
        }
        return 2 * sum;
    }

    /** Solves Ax = b. */
    double[] solve(double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < size; i++) {
            int row = i * (width + 1) + width - i;
            double sum = x[i];
            for (int k = Math.max(0, i - width); k < i; k++) {
                sum -= factor[row + k] * x[k];
            }
            x[i] = sum / factor[row + i];
        }
        for (int i = size - 1; i >= 0; i--) {
            int row = i * (width + 1) + width - i;
            x[i] /= factor[row + i];
            for (int k = Math.max(0, i - width); k < i; k++) {
                x[k] -= factor[row + k] * x[i];
            }
        }
        return x;
    }

    /**
     * The entries of A⁻¹ within a band that may be wider than A's (Takahashi, Fagan and Chen, 1973: each row follows from those
     * below it).
     */
    SelectedInverse selectedInverse(int inverseWidth) {
        int w = Math.max(width, inverseWidth);
        int stride = 2 * w + 1;
        double[] inverse = new double[size * stride];
        double[] row = new double[w + 1];
        for (int i = size - 1; i >= 0; i--) {
            int last = Math.min(size - 1, i + w);
            java.util.Arrays.fill(row, 0);
            double diagonal = factor[i * (width + 1) + width];
            for (int k = i + 1; k <= Math.min(size - 1, i + width); k++) {
                double l = -factor[k * (width + 1) + i - k + width] / diagonal;
                if (l != 0) {
                    int at = k * stride + w - k;
                    for (int j = i + 1; j <= last; j++) {
                        row[j - i] += l * inverse[at + j];
                    }
                }
            }
            double self = 1 / (diagonal * diagonal);
            for (int k = i + 1; k <= Math.min(size - 1, i + width); k++) {
                self -= factor[k * (width + 1) + i - k + width] / diagonal * row[k - i];
            }
            inverse[i * stride + w] = self;
            for (int j = i + 1; j <= last; j++) {
                inverse[i * stride + w + j - i] = row[j - i];
                inverse[j * stride + w + i - j] = row[j - i];
            }
        }
        return new SelectedInverse(w, inverse);
    }
}
