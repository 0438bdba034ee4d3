package org.cupwright.green.spline;

/**
 * The lower half of a symmetric matrix whose entries vanish away from the diagonal.
 *
 * <p>Rows are kept in groups of {@link #BLOCK} that start at the same column, so that the factorisation can work on
 * small squares; the order is rounded up with rows of the unit matrix, which change neither determinant nor solution.
 */
final class BandMatrix {
    static final int BLOCK = 4;

    final int order;
    final int blocks;
    /** Blocks left of the diagonal block. */
    final int blocksBefore;

    final int stride;
    final double[] values;

    BandMatrix(int order, int halfBandwidth) {
        this.order = order;
        this.blocks = (order + BLOCK - 1) / BLOCK;
        this.blocksBefore = Math.min((halfBandwidth + BLOCK - 1) / BLOCK, blocks - 1);
        this.stride = BLOCK * (blocksBefore + 1);
        this.values = new double[Math.multiplyExact(blocks * BLOCK, stride)];
        for (int row = order; row < blocks * BLOCK; row++) {
            values[offset(row, row)] = 1;
        }
    }

    private BandMatrix(BandMatrix other) {
        this.order = other.order;
        this.blocks = other.blocks;
        this.blocksBefore = other.blocksBefore;
        this.stride = other.stride;
        this.values = other.values.clone();
    }

    BandMatrix copy() {
        return new BandMatrix(this);
    }

    /** Where the entry of a row and a column stands in {@link #values}; the column must lie in the row's band. */
    int offset(int row, int column) {
        return row * stride + column - BLOCK * (row / BLOCK - blocksBefore);
    }

    /** Adds to an entry of the lower half: column ≤ row. */
    void add(int row, int column, double value) {
        values[offset(row, column)] += value;
    }

    /** The symmetric matrix times a vector; as long as the rows are. */
    double[] times(double[] vector) {
        double[] product = new double[blocks * BLOCK];
        for (int row = 0; row < order; row++) {
            int first = Math.max(0, BLOCK * (row / BLOCK - blocksBefore));
            double sum = values[offset(row, row)] * vector[row];
            for (int column = first; column < row; column++) {
                double entry = values[offset(row, column)];
                sum += entry * vector[column];
                product[column] += entry * vector[row];
            }
            product[row] += sum;
        }
        return product;
    }
}
