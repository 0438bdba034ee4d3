package org.cupwright.green.spline;

/**
 * The entries of the inverse of a banded matrix that lie near the diagonal, without the others.
 *
 * <p>The recurrence of Takahashi, Fagan and Chen (1973) gives the inverse in the band of the factor; here it runs in a
 * wider band, as far as the covariances of what is read over a disc need. It works from the last rows backwards in
 * blocks of four: with K running over the rows below block I, U(I,I)·S(I,J) = −Σ U(I,K)·S(K,J).
 */
final class SelectedInverse {
    private static final int BLOCK = BandMatrix.BLOCK;

    private final BandMatrix upper;
    private final int before;
    private final int width;
    /** Each row from the factor's band before its block to the wider one behind; columns as {@link BandMatrix} has. */
    private final double[][] rows;

    private final int[] slots;

    SelectedInverse(BandCholesky factor, int halfBandwidth) {
        this.upper = factor.upper;
        this.before = upper.width - BLOCK;
        int wanted = BLOCK * ((halfBandwidth + BLOCK - 1) / BLOCK);
        this.width = before + BLOCK + Math.max(before, Math.min(wanted, upper.length - BLOCK));
        Math.multiplyExact(upper.length, width);
        this.rows = new double[upper.length][width];
        this.slots = BandMatrix.slots(upper.length, width);
        for (int top = upper.length - BLOCK; top >= 0; top -= BLOCK) {
            fill(top);
        }
    }

    /** The entry of the inverse for two coefficients at most the asked half-bandwidth apart. */
    double get(int one, int other) {
        return rows[Math.min(one, other)][slots[Math.max(one, other)]];
    }

    /** Entries of a row, from the factor's band before it to the asked half-bandwidth behind it. */
    double[] row(int one) {
        return rows[one];
    }

    /** Where each coefficient stands in a row. */
    int[] slots() {
        return slots;
    }

    private void fill(int top) {
        int last = Math.min(upper.length, top + width - before);
        for (int below = top + BLOCK; below < upper.end(top); below += BLOCK) {
            for (int row = top; row < top + BLOCK; row++) {
                subtract(row, below, top + BLOCK, last);
            }
        }
        for (int row = top + BLOCK - 1; row >= top; row--) {
            finish(row, top + BLOCK, last);
        }
        for (int below = top + BLOCK; below < upper.end(top); below++) {
            for (int row = top; row < top + BLOCK; row++) {
                rows[below][slots[row]] = rows[row][slots[below]];
            }
        }
        fillDiagonal(top);
    }

    /** Takes four rows of the inverse times the factor's entries for them off a row. */
    private void subtract(int row, int below, int fromColumn, int toColumn) {
        double[] u = upper.rows[row];
        int slot = upper.slot(below);
        double a = u[slot];
        double b = u[slot + 1];
        double c = u[slot + 2];
        double d = u[slot + 3];
        double[] one = rows[below];
        double[] two = rows[below + 1];
        double[] three = rows[below + 2];
        double[] four = rows[below + 3];
        int from = slots[fromColumn];
        int to = from + toColumn - fromColumn;
        Rows.subtract(rows[row], a, one, b, two, c, three, d, four, from, Math.min(to, width));
        Rows.subtract(rows[row], a, one, b, two, c, three, d, four, 0, to - width);
    }

    /** Takes the rows of its block behind it off a row, and divides it by the factor's diagonal. */
    private void finish(int row, int fromColumn, int toColumn) {
        if (fromColumn >= toColumn) {
            return;
        }
        int from = slots[fromColumn];
        int to = from + toColumn - fromColumn;
        for (int after = row + 1; after < fromColumn; after++) {
            double entry = upper.rows[row][upper.slot(after)];
            Rows.subtract(rows[row], entry, rows[after], from, Math.min(to, width));
            Rows.subtract(rows[row], entry, rows[after], 0, to - width);
        }
        double diagonal = upper.rows[row][upper.slot(row)];
        Rows.divide(rows[row], diagonal, from, Math.min(to, width));
        Rows.divide(rows[row], diagonal, 0, to - width);
    }

    /** The square on the diagonal, of which the other rows' entries are known: U(I,I)·S(I,I) = U(I,I)⁻ᵀ − Σ. */
    private void fillDiagonal(int top) {
        double[][] sums = new double[BLOCK][BLOCK];
        for (int below = top + BLOCK; below < upper.end(top); below++) {
            int slot = upper.slot(below);
            for (int row = 0; row < BLOCK; row++) {
                double entry = upper.rows[top + row][slot];
                for (int column = row; column < BLOCK; column++) {
                    sums[row][column] += entry * rows[below][slots[top] + column];
                }
            }
        }
        int slot = upper.slot(top);
        for (int column = BLOCK - 1; column >= 0; column--) {
            for (int row = column; row >= 0; row--) {
                double[] u = upper.rows[top + row];
                double value = (row == column ? 1 / u[slot + row] : 0) - sums[row][column];
                for (int after = row + 1; after < BLOCK; after++) {
                    value -= u[slot + after] * rows[top + after][slots[top] + column];
                }
                rows[top + row][slots[top] + column] = value / u[slot + row];
                rows[top + column][slots[top] + row] = value / u[slot + row];
            }
        }
    }
}
