package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * Leverages b(i)'(B'B+λP)⁻¹b(j) of one point with its neighbours: what the fit makes their residuals share, in units of −σ².
 *
 * <p>The row b(i)'(B'B+λP)⁻¹ is worked out once for all coefficients that neighbours can depend on; each neighbour then costs
 * sixteen products.
 */
final class Leverages {
    private final NormalEquations equations;
    private final SelectedInverse inverse;
    private final KnotGrid grid;
    private final int cells;
    private final int side;
    private final double[] row;
    private int firstEast;
    private int firstNorth;

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
        this.row = new double[side * side];
    }

    /** Takes the point whose leverages with others are asked next. */
    void about(int point) {
        NormalEquations.Basis basis = equations.basis(point);
        firstEast = basis.cellEast() - cells;
        firstNorth = basis.cellNorth() - cells;
        Arrays.fill(row, 0);
        int fromEast = Math.max(0, -firstEast);
        int toEast = Math.min(side, grid.coefficientsEast() - firstEast);
        int fromNorth = Math.max(0, -firstNorth);
        int toNorth = Math.min(side, grid.coefficientsNorth() - firstNorth);
        for (int east = fromEast; east < toEast; east++) {
            for (int north = fromNorth; north < toNorth; north++) {
                row[east * side + north] = entry(basis, grid.index(firstEast + east, firstNorth + north));
            }
        }
    }

    private double entry(NormalEquations.Basis basis, int coefficient) {
        double sum = 0;
        for (int a = 0; a < 16; a++) {
            int own = grid.index(basis.cellEast() + a / 4, basis.cellNorth() + a % 4);
            sum += basis.products()[a] * inverse.get(own, coefficient);
        }
        return sum;
    }

    /** Whether a point's leverage can be told. */
    boolean reaches(NormalEquations.Basis other) {
        int east = other.cellEast() - firstEast;
        int north = other.cellNorth() - firstNorth;
        return east >= 0 && east <= 2 * cells && north >= 0 && north <= 2 * cells;
    }

    double with(NormalEquations.Basis other) {
        int from = (other.cellEast() - firstEast) * side + other.cellNorth() - firstNorth;
        double sum = 0;
        for (int a = 0; a < 16; a++) {
            sum += other.products()[a] * row[from + a / 4 * side + a % 4];
        }
        return sum;
    }
}
