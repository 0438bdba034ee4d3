package org.cupwright.green.spline;

/** The upper Cholesky factor U of a band matrix A = UᵀU, kept as {@link Band} keeps its rows. */
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
            sum += StrictMath.log(factor[i * (width + 1)]);
        }
        return 2 * sum;
    }

    /** Solves Ax = b. */
    double[] solve(double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < size; i++) {
            int row = i * (width + 1);
            x[i] /= factor[row];
            for (int k = 1; k <= Math.min(width, size - 1 - i); k++) {
                x[i + k] -= factor[row + k] * x[i];
            }
        }
        for (int i = size - 1; i >= 0; i--) {
            int row = i * (width + 1);
            double sum = x[i];
            for (int k = 1; k <= Math.min(width, size - 1 - i); k++) {
                sum -= factor[row + k] * x[i + k];
            }
            x[i] = sum / factor[row];
        }
        return x;
    }

    /**
     * The entries of A⁻¹ within a band that may be wider than A's (Takahashi, Fagan and Chen, 1973, recalled: each row follows from
     * those below it).
     */
    SelectedInverse selectedInverse(int inverseWidth) {
        SelectedInverse inverse = new SelectedInverse(size, Math.max(width, inverseWidth));
        double[] row = new double[inverse.width() + 1];
        for (int i = size - 1; i >= 0; i--) {
            int last = Math.min(width, size - 1 - i);
            int wide = Math.min(inverse.width(), size - 1 - i);
            int at = i * (width + 1);
            double diagonal = factor[at];
            java.util.Arrays.fill(row, 0);
            for (int k = 1; k <= last; k++) {
                inverse.addRow(i + k, i + 1, wide, -factor[at + k] / diagonal, row);
            }
            double self = 1 / (diagonal * diagonal);
            for (int k = 1; k <= last; k++) {
                self -= factor[at + k] / diagonal * row[k];
            }
            row[0] = self;
            inverse.set(i, wide, row);
        }
        return inverse;
    }
}
