package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * Leverages b(i)'(B'B+λP)⁻¹b(j) of one point with its neighbours towards the east, those straight north and south among
 * them: what the fit makes their residuals share, in units of −σ².
 *
 * <p>Points of one cell depend on the same sixteen coefficients, so the rows of the inverse for those are looked up
 * once a cell, for all coefficients that neighbours can depend on. Each point then weighs them into one row, and each
 * neighbour costs sixteen products. Take points cell by cell.
 */
final class Leverages {
    private static final int OWN = 16;

    private final NormalEquations equations;
    private final SelectedInverse inverse;
    private final KnotGrid grid;
    private final int cells;
    private final int side;
    private final double[][] entries;
    private final double[] row;
    private int cellEast = Integer.MIN_VALUE;
    private int cellNorth = Integer.MIN_VALUE;

    /**
     * @param inverse as wide as is asked of it
     * @param cells neighbours lie at most so many cells away, in each direction
     */
    Leverages(NormalEquations equations, SelectedInverse inverse, int cells) {
        this.equations = equations;
        this.inverse = inverse;
        this.grid = equations.grid;
        this.cells = cells;
        this.side = 2 * cells + 4;
        this.row = new double[(cells + 4) * side];
        this.entries = new double[OWN][row.length];
    }

    /** Takes the point whose leverages with others are asked next. */
    void about(int point) {
        NormalEquations.Basis basis = equations.basis(point);
        if (basis.cellEast() != cellEast || basis.cellNorth() != cellNorth) {
            cellEast = basis.cellEast();
            cellNorth = basis.cellNorth();
            lookUp();
        }
        Arrays.fill(row, 0);
        for (int a = 0; a < OWN; a++) {
            double product = basis.products()[a];
            double[] own = entries[a];
            for (int i = 0; i < row.length; i++) {
                row[i] += product * own[i];
            }
        }
    }

    /**
     * Entries of the inverse for the cell's own coefficients; those beyond the grid stay as they were and are never
     * read.
     */
    private void lookUp() {
        int firstNorth = cellNorth - cells;
        int toEast = Math.min(cells + 4, grid.coefficientsEast() - cellEast);
        int fromNorth = Math.max(0, -firstNorth);
        int toNorth = Math.min(side, grid.coefficientsNorth() - firstNorth);
        for (int a = 0; a < OWN; a++) {
            int own = grid.index(cellEast + a / 4, cellNorth + a % 4);
            for (int east = 0; east < toEast; east++) {
                for (int north = fromNorth; north < toNorth; north++) {
                    int other = grid.index(cellEast + east, firstNorth + north);
                    entries[a][east * side + north] = inverse.get(own, other);
                }
            }
        }
    }

    /** Whether a point's leverage can be told. */
    boolean reaches(NormalEquations.Basis other) {
        int east = other.cellEast() - cellEast;
        int north = other.cellNorth() - cellNorth;
        return east >= 0 && east <= cells && north >= -cells && north <= cells;
    }

    double with(NormalEquations.Basis other) {
        int from = (other.cellEast() - cellEast) * side + other.cellNorth() - cellNorth + cells;
        double sum = 0;
        for (int a = 0; a < OWN; a++) {
            sum += other.products()[a] * row[from + a / 4 * side + a % 4];
        }
        return sum;
    }
}
