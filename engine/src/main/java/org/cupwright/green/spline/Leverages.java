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

    private final PointBasis basis;
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
        this.basis = equations.basis;
        this.inverse = inverse;
        this.grid = equations.grid;
        this.cells = cells;
        this.side = 2 * cells + 4;
        this.row = new double[(cells + 4) * side];
        this.entries = new double[OWN][row.length];
    }

    /**
     * Takes the point whose leverages with others are asked next.
     *
     * @param cell the one it lies in
     * @param place its own in {@link PointBasis#order}
     */
    void about(int cell, int place) {
        if (basis.cellEast(cell) != cellEast || basis.cellNorth(cell) != cellNorth) {
            cellEast = basis.cellEast(cell);
            cellNorth = basis.cellNorth(cell);
            lookUp();
        }
        Arrays.fill(row, 0);
        int at = PointBasis.SIZE * place;
        for (int a = 0; a < 4; a++) {
            double[] v = basis.values;
            double east = -v[at + a];
            Rows.subtract(
                    row,
                    east * v[at + 4],
                    entries[4 * a],
                    east * v[at + 5],
                    entries[4 * a + 1],
                    east * v[at + 6],
                    entries[4 * a + 2],
                    east * v[at + 7],
                    entries[4 * a + 3],
                    0,
                    row.length);
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

    /** Whether leverages with the points of a cell can be told. */
    boolean reaches(int otherCell) {
        int east = basis.cellEast(otherCell) - cellEast;
        int north = basis.cellNorth(otherCell) - cellNorth;
        return east >= 0 && east <= cells && north >= -cells && north <= cells;
    }

    /** @param place of a point of that cell in {@link PointBasis#order} */
    double with(int otherCell, int place) {
        int east = basis.cellEast(otherCell) - cellEast;
        return basis.sum(place, row, east * side + basis.cellNorth(otherCell) - cellNorth + cells, side);
    }
}
