package org.cupwright.green.spline;

/** The entries (i, j) of a symmetric inverse with |i − j| ≤ width; both halves are kept, so that a row lies in one piece. */
final class SelectedInverse {
    private final int width;
    private final double[] entries;

    SelectedInverse(int size, int width) {
        this.width = width;
        this.entries = new double[size * (2 * width + 1)];
    }

    int width() {
        return width;
    }

    double get(int i, int j) {
        return entries[row(i) + j];
    }

    /** Where row i's entry for column 0 would stand; add the column. */
    int row(int i) {
        return i * (2 * width + 1) + width - i;
    }

    double[] entries() {
        return entries;
    }

    /** Adds a multiple of the entries (k, first), (k, first + 1)… to sum[1], sum[2]…, so many of them. */
    void addRow(int k, int first, int count, double times, double[] sum) {
        if (times != 0) {
            int at = row(k) + first - 1;
            for (int j = 1; j <= count; j++) {
                sum[j] += times * entries[at + j];
            }
        }
    }

    /** Sets the entries (i, i)…(i, i + last) and their mirror images. */
    void set(int i, int last, double[] row) {
        int at = row(i) + i;
        for (int k = 0; k <= last; k++) {
            entries[at + k] = row[k];
            entries[row(i + k) + i] = row[k];
        }
    }
}
