package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

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
    static final int[][] ENTRIES = {{0, 0}, {0, 1}, {1, 1}, {2, 2}, {2, 3}, {2, 4}, {3, 3}, {3, 4}, {4, 4}};

    static final int SIZE = ENTRIES.length;

    /** Where the five variances stand among the entries. */
    static final int[] DIAGONAL = {0, 2, 3, 6, 8};

    private final KnotGrid grid;
    private final HeightFunctionals functionals;
    private final Stencil[] stencils;
    final int rows;
    private final double[] values;
    /** What is to be added to the five quantities at each node; null where nothing was missed. */
    private final double[] corrections;

    private DiscCovariances(
            KnotGrid grid, HeightFunctionals functionals, Stencil[] stencils, double[] values, double[] corrections) {
        this.corrections = corrections;
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
        DiscCovariances made = new DiscCovariances(grid, functionals, stencils(grid, functionals), values, null);
        // Every node is worked out by itself: the figures do not depend on which is when.
        IntStream.range(0, columns * rows).parallel().forEach(node -> {
            if (made.fits(node) && wanted.at(made.east(node), made.north(node))) {
                made.put(node, variance, inverse);
            }
        });
        return made;
    }

    private void put(int node, double variance, SelectedInverse inverse) {
        double[][] covariance = stencil(node).covariance(inverse, corner(node));
        for (int k = 0; k < SIZE; k++) {
            values[SIZE * node + k] = variance * covariance[ENTRIES[k][0]][ENTRIES[k][1]];
        }
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

    /** How many nodes there are. */
    int count() {
        return values.length / SIZE;
    }

    boolean isKnown(int node) {
        return !Double.isNaN(values[SIZE * node]);
    }

    /** The entries of all nodes, {@link #SIZE} each. */
    double[] values() {
        return values.clone();
    }

    /** Nodes that lie so far apart are as many nodes apart, at most. */
    int nodesWithin(double metres) {
        return (int) Math.floor(metres * NODES_PER_CELL / grid.spacingMetres());
    }

    HeightFunctionals functionals() {
        return functionals;
    }

    double east(int node) {
        int column = node / rows;
        return grid.west() + column * grid.spacingMetres() / NODES_PER_CELL;
    }

    double north(int node) {
        int row = node % rows;
        return grid.south() + row * grid.spacingMetres() / NODES_PER_CELL;
    }

    /** A margin keeps points that rounding puts on the grid's edge off the cells beyond. */
    boolean fits(int node) {
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
        return new DiscCovariances(grid, functionals, stencils, more, corrections);
    }

    /** These covariances with what was missed at steps added where a disc touches one. */
    DiscCovariances plus(StepMisfit misfit) {
        MissedAtNodes missed = new MissedAtNodes(this, misfit);
        return new DiscCovariances(grid, functionals, stencils, missed.values(), missed.corrections());
    }

    /** These covariances less the products of some directions d d' in the space of the coefficients. */
    DiscCovariances less(List<double[]> directions) {
        return directions.isEmpty() ? this : plus(-1, new DirectionProducts(this, directions));
    }

    /**
     * These covariances and the products of directions of shared errors. They vary over lengths of their own, well
     * beyond a cell, and are worked out at the knots: between them the mean of their neighbours is good to a
     * thousandth.
     */
    DiscCovariances plus(List<double[]> directions) {
        return directions.isEmpty() ? this : plus(1, new DirectionProducts(this, directions).fromKnots());
    }

    private DiscCovariances plus(double times, DirectionProducts products) {
        double[] changed = values.clone();
        for (int node = 0; node < count(); node++) {
            if (isKnown(node)) {
                double[] entries = products.at(node);
                for (int k = 0; k < SIZE; k++) {
                    changed[SIZE * node + k] += times * entries[k];
                }
            }
        }
        return new DiscCovariances(grid, functionals, stencils, changed, corrections);
    }

    /** The nine entries of the sum of the products of directions at a node. */
    double[] products(int node, double[][] directions) {
        double[][] shares = stencil(node).times(directions, corner(node));
        double[] entries = new double[SIZE];
        for (int k = 0; k < SIZE; k++) {
            double[] one = shares[ENTRIES[k][0]];
            double[] other = shares[ENTRIES[k][1]];
            for (int i = 0; i < one.length; i++) {
                entries[k] += one[i] * other[i];
            }
        }
        return entries;
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

    /** What is to be added to the five quantities at a spot. */
    double[] correctionAt(double east, double north) {
        double[] sums = new double[DIAGONAL.length];
        if (corrections == null) {
            return sums;
        }
        double x = NODES_PER_CELL * grid.cellsFromWest(east);
        double y = NODES_PER_CELL * grid.cellsFromSouth(north);
        int column = clamp(x, NODES_PER_CELL * grid.cellsEast());
        int row = clamp(y, NODES_PER_CELL * grid.cellsNorth());
        for (int k = 0; k < sums.length; k++) {
            int at = sums.length * (column * rows + row) + k;
            int next = at + sums.length * rows;
            double west = corrections[at] * (1 - y + row) + corrections[at + sums.length] * (y - row);
            double eastern = corrections[next] * (1 - y + row) + corrections[next + sums.length] * (y - row);
            sums[k] = west * (1 - x + column) + eastern * (x - column);
        }
        return sums;
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
