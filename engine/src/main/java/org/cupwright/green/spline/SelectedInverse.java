package org.cupwright.green.spline;

/** The entries (i, j) of a symmetric inverse with |i − j| ≤ width. */
final class SelectedInverse {
    private final int width;
    private final double[] entries;

    SelectedInverse(int width, double[] entries) {
        this.width = width;
        this.entries = entries;
    }

    double get(int i, int j) {
        return entries[i * (2 * width + 1) + width + j - i];
    }

    /** Where row i's entry for column 0 would stand; add the column. */
    int row(int i) {
        return i * (2 * width + 1) + width - i;
    }

    double[] entries() {
        return entries;
    }
}
