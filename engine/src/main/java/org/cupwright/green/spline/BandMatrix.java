package org.cupwright.green.spline;

/**
 * The upper half of a symmetric matrix whose entries vanish away from the diagonal.
 *
 * <p>Each row is an array as long as the band is wide, and a column stands at the same place of every row: at its
 * number's remainder. Rows go in groups of {@link #BLOCK} that end at the same column; the order is rounded up with
 * rows of the unit matrix, which change neither determinant nor solution.
 */
final class BandMatrix {
    static final int BLOCK = 4;

    final int order;
    /** The order rounded up: as long as vectors are. */
    final int length;
    /** Columns that a block of rows reaches over, from its own first one. */
    final int width;

    final double[][] rows;
    private final int[] slots;

    BandMatrix(int order, int halfBandwidth) {
        this.order = order;
        int blocks = (order + BLOCK - 1) / BLOCK;
        this.length = blocks * BLOCK;
        this.width = BLOCK * (1 + Math.min((halfBandwidth + BLOCK - 1) / BLOCK, blocks - 1));
        Math.multiplyExact(length, width);
        this.rows = new double[length][width];
        this.slots = slots(length, width);
        for (int row = order; row < length; row++) {
            rows[row][slots[row]] = 1;
        }
    }

    private BandMatrix(BandMatrix other) {
        this.order = other.order;
        this.length = other.length;
        this.width = other.width;
        this.slots = other.slots;
        this.rows = new double[length][];
        for (int row = 0; row < length; row++) {
            rows[row] = other.rows[row].clone();
        }
    }

    /** Where each column stands in arrays of a width. */
    static int[] slots(int columns, int width) {
        int[] slots = new int[columns];
        for (int column = 0; column < columns; column++) {
            slots[column] = column % width;
        }
        return slots;
    }

    BandMatrix copy() {
        return new BandMatrix(this);
    }

    /** Where a column stands in a row. */
    int slot(int column) {
        return slots[column];
    }

    /** The first column after a row's last. */
    int end(int row) {
        return Math.min(length, BLOCK * (row / BLOCK) + width);
    }

    /** Adds to an entry: column ≤ row; the same entry counts on the other side of the diagonal. */
    void add(int row, int column, double value) {
        rows[column][slots[row]] += value;
    }

    /** What is done with an entry that is not zero: row ≤ column. */
    interface Entry {
        void visit(int row, int column, double value);
    }

    void forEach(Entry entry) {
        for (int row = 0; row < order; row++) {
            for (int column = row; column < Math.min(order, end(row)); column++) {
                double value = rows[row][slots[column]];
                if (value != 0) {
                    entry.visit(row, column, value);
                }
            }
        }
    }
}
