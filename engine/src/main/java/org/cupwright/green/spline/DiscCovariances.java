package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Covariances of the quantities read over a disc, at nodes half a cell apart, and between the nodes by bilinear
 * interpolation.
 *
 * <p>They vary over lengths of the disc, not of the node spacing, so interpolation changes a standard error by a
 * percent or two; what is interpolated stays positive definite. The quantities themselves are not interpolated.
 */
final class DiscCovariances {
    static final int NODES_PER_CELL = 2;

    /** Entries kept: the plane's 3 and the quadratic's 6. */
    private static final int[][] ENTRIES = {{0, 0}, {0, 1}, {1, 1}, {2, 2}, {2, 3}, {2, 4}, {3, 3}, {3, 4}, {4, 4}};

    static final int SIZE = ENTRIES.length;

    private final KnotGrid grid;
    private final HeightFunctionals functionals;
    private final Stencil[] stencils;
    private final int rows;
    private final double[] values;

    private DiscCovariances(KnotGrid grid, HeightFunctionals functionals, Stencil[] stencils, double[] values) {
        this.grid = grid;
        this.functionals = functionals;
        this.stencils = stencils;
        this.rows = grid.cellsNorth() * NODES_PER_CELL + 1;
        this.values = values;
    }

    /** Whether the covariances of a node are wanted at all. */
    interface Wanted {
        boolean at(double east, double north);
    }

    /**
     * @param inverse the selected inverse, wide enough for the functionals
     * @param variance σ² of the heights
     */
    static DiscCovariances of(
            KnotGrid grid, HeightFunctionals functionals, SelectedInverse inverse, double variance, Wanted wanted) {
        int columns = grid.cellsEast() * NODES_PER_CELL + 1;
        int rows = grid.cellsNorth() * NODES_PER_CELL + 1;
        double[] values = new double[columns * rows * SIZE];
        Arrays.fill(values, Double.NaN);
        DiscCovariances made = new DiscCovariances(grid, functionals, stencils(grid, functionals), values);
        for (int node = 0; node < columns * rows; node++) {
            if (made.fits(node) && wanted.at(made.east(node), made.north(node))) {
                double[][] covariance = made.stencil(node).covariance(inverse, made.corner(node));
                for (int k = 0; k < SIZE; k++) {
                    values[SIZE * node + k] = variance * covariance[ENTRIES[k][0]][ENTRIES[k][1]];
                }
            }
        }
        return made;
    }

    private static Stencil[] stencils(KnotGrid grid, HeightFunctionals functionals) {
        Stencil[] stencils = new Stencil[NODES_PER_CELL * NODES_PER_CELL];
        for (int i = 0; i < stencils.length; i++) {
            int column = i / NODES_PER_CELL;
            int row = i % NODES_PER_CELL;
            double east = (double) column / NODES_PER_CELL;
            double north = (double) row / NODES_PER_CELL;
            stencils[i] = Stencil.at(east, north, functionals, grid);
        }
        return stencils;
    }

    HeightFunctionals functionals() {
        return functionals;
    }

    private double east(int node) {
        int column = node / rows;
        return grid.west() + column * grid.spacingMetres() / NODES_PER_CELL;
    }

    private double north(int node) {
        int row = node % rows;
        return grid.south() + row * grid.spacingMetres() / NODES_PER_CELL;
    }

    /** A margin keeps points that rounding puts on the grid's edge off the cells beyond. */
    private boolean fits(int node) {
        return grid.holdsDisc(east(node), north(node), functionals.reachMetres + 1e-6);
    }

    private Stencil stencil(int node) {
        return stencils[node / rows % NODES_PER_CELL * NODES_PER_CELL + node % rows % NODES_PER_CELL];
    }

    private int corner(int node) {
        return grid.index(node / rows / NODES_PER_CELL, node % rows / NODES_PER_CELL);
    }

    /** These covariances with the same added at every node. */
    DiscCovariances plus(double[] everywhere) {
        double[] more = values.clone();
        for (int i = 0; i < more.length; i++) {
            more[i] += everywhere[i % SIZE];
        }
        return new DiscCovariances(grid, functionals, stencils, more);
    }

    /** These covariances less the products of some directions d d' in the space of the coefficients. */
    DiscCovariances less(List<double[]> directions) {
        double[] reduced = values.clone();
        for (int node = 0; node < values.length / SIZE; node++) {
            if (!Double.isNaN(values[SIZE * node])) {
                reduce(node, directions, reduced);
            }
        }
        return new DiscCovariances(grid, functionals, stencils, reduced);
    }

    private void reduce(int node, List<double[]> directions, double[] reduced) {
        Stencil stencil = stencil(node);
        double[] shares = new double[stencil.rows()];
        for (double[] direction : directions) {
            for (int row = 0; row < shares.length; row++) {
                shares[row] = stencil.apply(row, direction, corner(node));
            }
            for (int k = 0; k < SIZE; k++) {
                reduced[SIZE * node + k] -= shares[ENTRIES[k][0]] * shares[ENTRIES[k][1]];
            }
        }
    }

    /**
     * The nine entries at a spot: the plane's (east², east·north, north²), then the upper triangle of the quadratic's;
     * NaN where none of the nodes about it is known.
     */
    double[] at(double east, double north) {
        double x = NODES_PER_CELL * grid.cellsFromWest(east);
        double y = NODES_PER_CELL * grid.cellsFromSouth(north);
        int column = clamp(x, NODES_PER_CELL * grid.cellsEast());
        int row = clamp(y, NODES_PER_CELL * grid.cellsNorth());
        double[] sums = new double[SIZE];
        double total = add(column, row, (1 - x + column) * (1 - y + row), sums)
                + add(column + 1, row, (x - column) * (1 - y + row), sums)
                + add(column, row + 1, (1 - x + column) * (y - row), sums)
                + add(column + 1, row + 1, (x - column) * (y - row), sums);
        DoubleUnaryOperator share = sum -> total > 0 ? sum / total : Double.NaN;
        return Arrays.stream(sums).map(share).toArray();
    }

    private static int clamp(double x, int cells) {
        return Math.min(Math.max((int) Math.floor(x), 0), cells - 1);
    }

    private double add(int column, int row, double weight, double[] sums) {
        int at = SIZE * (column * rows + row);
        if (!(weight > 0) || Double.isNaN(values[at])) {
            return 0;
        }
        for (int k = 0; k < SIZE; k++) {
            sums[k] += weight * values[at + k];
        }
        return weight;
    }
}
