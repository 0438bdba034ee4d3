package org.cupwright.green.spline;

/**
 * The entries of the inverse of a banded matrix that lie near the diagonal, without the others.
 *
 * <p>The recurrence of Takahashi, Fagan and Chen (1973) gives the inverse in the band of the factor; here it runs in a
 * wider band, as far as the covariances of what is read over a disc need. It works from the last column backwards in
 * squares of four: with K running over the rows below block I, S(I,J) = −L(I,I)⁻ᵀ · Σ L(K,I)ᵀ S(K,J).
 */
final class SelectedInverse {
    private static final int BLOCK = BandMatrix.BLOCK;
    private static final int SQUARE = BLOCK * BLOCK;

    private final BandMatrix lower;
    private final int blocksBefore;
    private final int panel;
    /** For each block column its squares from {@code blocksBefore} above the diagonal to the factor's band below it. */
    private final double[] values;

    private final double[] below;
    private final double[] sums = new double[SQUARE];

    SelectedInverse(BandCholesky factor, int halfBandwidth) {
        this.lower = factor.lower;
        int wanted = (halfBandwidth + BLOCK - 1) / BLOCK;
        this.blocksBefore = Math.max(lower.blocksBefore, Math.min(wanted, lower.blocks - 1));
        this.panel = SQUARE * (blocksBefore + 1 + lower.blocksBefore);
        this.values = new double[Math.multiplyExact(lower.blocks, panel)];
        this.below = new double[SQUARE * (lower.blocksBefore + 1)];
        for (int block = lower.blocks - 1; block >= 0; block--) {
            fill(block);
        }
    }

    /** The entry of the inverse for two coefficients at most the asked half-bandwidth apart. */
    double get(int one, int other) {
        return above(Math.min(one, other), Math.max(one, other));
    }

    /** The entry for a row that is no greater than the column. */
    double above(int row, int column) {
        // Shifts instead of divisions: this is read some ten million times a green.
        int square = (column >> 2) * panel + SQUARE * ((row >> 2) - (column >> 2) + blocksBefore);
        return values[square + BLOCK * (row & 3) + (column & 3)];
    }

    private int square(int row, int column) {
        return column * panel + SQUARE * (row - column + blocksBefore);
    }

    private void fill(int block) {
        int last = Math.min(lower.blocks - 1, block + lower.blocksBefore);
        copyBelow(block, last);
        for (int column = Math.min(lower.blocks - 1, block + blocksBefore); column > block; column--) {
            sum(square(block + 1, column), BLOCK * (last - block), 0);
            sum(square(block + 1, column), BLOCK * (last - block), 2);
            for (int i = 0; i < SQUARE; i++) {
                sums[i] = -sums[i];
            }
            divideAndStore(block, column);
        }
        sum(square(block + 1, block), BLOCK * (last - block), 0);
        sum(square(block + 1, block), BLOCK * (last - block), 2);
        subtractFromInverseDiagonal(block);
        divideAndStore(block, block);
    }

    /** The factor's squares under a diagonal block, one after the other. */
    private void copyBelow(int block, int last) {
        int to = 0;
        for (int row = BLOCK * (block + 1); row < BLOCK * (last + 1); row++) {
            System.arraycopy(lower.values, lower.offset(row, BLOCK * block), below, to, BLOCK);
            to += BLOCK;
        }
    }

    /** Four rows by two columns of Σ L(K,I)ᵀ S(K,J). */
    private void sum(int from, int rows, int column) {
        double[] l = below;
        double[] s = values;
        int first = from + column;
        double s00 = 0;
        double s01 = 0;
        double s10 = 0;
        double s11 = 0;
        double s20 = 0;
        double s21 = 0;
        double s30 = 0;
        double s31 = 0;
        for (int k = 0; k < BLOCK * rows; k += BLOCK) {
            double y0 = s[first + k];
            double y1 = s[first + k + 1];
            double x0 = l[k];
            double x1 = l[k + 1];
            double x2 = l[k + 2];
            double x3 = l[k + 3];
            s00 += x0 * y0;
            s01 += x0 * y1;
            s10 += x1 * y0;
            s11 += x1 * y1;
            s20 += x2 * y0;
            s21 += x2 * y1;
            s30 += x3 * y0;
            s31 += x3 * y1;
        }
        sums[column] = s00;
        sums[column + 1] = s01;
        sums[BLOCK + column] = s10;
        sums[BLOCK + column + 1] = s11;
        sums[2 * BLOCK + column] = s20;
        sums[2 * BLOCK + column + 1] = s21;
        sums[3 * BLOCK + column] = s30;
        sums[3 * BLOCK + column + 1] = s31;
    }

    /** sums := L(I,I)⁻¹ − sums. */
    private void subtractFromInverseDiagonal(int block) {
        double[] a = lower.values;
        for (int column = 0; column < BLOCK; column++) {
            double[] inverse = new double[BLOCK];
            for (int row = column; row < BLOCK; row++) {
                int at = lower.offset(BLOCK * block + row, BLOCK * block);
                double value = row == column ? 1 : 0;
                for (int k = column; k < row; k++) {
                    value -= a[at + k] * inverse[k];
                }
                inverse[row] = value / a[at + row];
            }
            for (int row = 0; row < BLOCK; row++) {
                sums[BLOCK * row + column] = inverse[row] - sums[BLOCK * row + column];
            }
        }
    }

    /** Stores L(I,I)⁻ᵀ · sums as S(I,J), and its transpose where later sums look for it. */
    private void divideAndStore(int block, int columnBlock) {
        double[] a = lower.values;
        int to = square(block, columnBlock);
        boolean mirrored = columnBlock > block && columnBlock - block <= lower.blocksBefore;
        int mirror = mirrored ? square(columnBlock, block) : 0;
        for (int column = 0; column < BLOCK; column++) {
            for (int row = BLOCK - 1; row >= 0; row--) {
                double value = sums[BLOCK * row + column];
                for (int k = row + 1; k < BLOCK; k++) {
                    value -= a[lower.offset(BLOCK * block + k, BLOCK * block + row)] * sums[BLOCK * k + column];
                }
                value /= a[lower.offset(BLOCK * block + row, BLOCK * block + row)];
                sums[BLOCK * row + column] = value;
                values[to + BLOCK * row + column] = value;
                if (mirrored) {
                    values[mirror + BLOCK * column + row] = value;
                }
            }
        }
    }
}
