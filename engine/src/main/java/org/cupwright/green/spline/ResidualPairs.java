package org.cupwright.green.spline;

import java.util.function.IntPredicate;

/**
 * How the residuals of neighbouring points hang together beyond what a fit makes them share, by the distance between
 * them: sums of r(i)·r(j) + σ²·b(i)'(B'B+λP)⁻¹b(j) over pairs of points that count and lie at no step.
 *
 * <p>Where there are very many pairs the products are summed by a lattice ({@link ResidualLattice}), and the second
 * part, which is smooth, is taken from every so many-th point with all its neighbours.
 */
final class ResidualPairs {
    /** Distances are sorted into classes so wide, m (our choice: a few hundred pairs in each even on thin surveys). */
    static final double CLASS_METRES = 0.15;

    /** More pairs of points of neighbouring cells than this are very many (our choice: some 30 ms). */
    private static final double MANY = 2e6;

    /** Then so many are looked at for what is smooth (our choice: good to a hundredth of it). */
    private static final double SOME = 5e5;

    /** For each class of distance: the sum over its pairs, and how many there are. */
    final double[] sums;

    final double[] counts;

    private final PointBasis basis;
    private final Leverages leverages;
    private final int cells;
    private final boolean[] counting;
    private final double[] residuals;

    private ResidualPairs(FittedSpline fitted, SelectedInverse inverse, int classes, int cells) {
        NormalEquations equations = fitted.equations;
        this.basis = equations.basis;
        this.leverages = new Leverages(equations, inverse, cells);
        this.cells = cells;
        this.sums = new double[classes];
        this.counts = new double[classes];
        double[] byPoint = equations.residuals(fitted.coefficients);
        this.residuals = new double[byPoint.length];
        this.counting = new boolean[byPoint.length];
        for (int place = 0; place < residuals.length; place++) {
            residuals[place] = byPoint[basis.order[place]];
            counting[place] = equations.countsOffSteps(basis.order[place]);
        }
    }

    /**
     * @param inverse wide enough for points so many cells apart
     * @param variance σ² of the heights
     */
    static ResidualPairs of(FittedSpline fitted, SelectedInverse inverse, double variance, int classes, int cells) {
        ResidualPairs pairs = new ResidualPairs(fitted, inverse, classes, cells);
        double candidates = pairs.candidates();
        if (candidates <= MANY) {
            pairs.sum(place -> true, variance, 1);
        } else {
            int every = (int) Math.ceil(candidates / SOME);
            pairs.sum(place -> place % every == 0, variance, 0);
            pairs.sumByLattice();
        }
        return pairs;
    }

    /** Pairs of points in neighbouring cells. */
    private double candidates() {
        double candidates = 0;
        for (int cell = 0; cell < basis.cells(); cell++) {
            double own = basis.firsts[cell + 1] - basis.firsts[cell];
            if (own > 0) {
                double[] others = new double[1];
                forEachAbout(cell, other -> others[0] += basis.firsts[other + 1] - basis.firsts[other]);
                candidates += own * (others[0] - own / 2);
            }
        }
        return candidates;
    }

    /** What is done with a cell. */
    private interface Cell {
        void visit(int other);
    }

    /** The cell itself and those about it towards the east, straight north among them: each pair of cells once. */
    private void forEachAbout(int cell, Cell about) {
        KnotGrid grid = basis.grid;
        int cellEast = basis.cellEast(cell);
        int cellNorth = basis.cellNorth(cell);
        for (int east = cellEast; east <= Math.min(cellEast + cells, grid.cellsEast() - 1); east++) {
            int first = east == cellEast ? cellNorth : Math.max(0, cellNorth - cells);
            for (int north = first; north <= Math.min(cellNorth + cells, grid.cellsNorth() - 1); north++) {
                about.visit(east * grid.cellsNorth() + north);
            }
        }
    }

    /** Sums over the pairs of some of the points with all others. */
    private void sum(IntPredicate one, double variance, double timesProducts) {
        for (int cell = 0; cell < basis.cells(); cell++) {
            int own = cell;
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                if (counting[place] && one.test(place)) {
                    int first = place;
                    leverages.about(cell, place);
                    forEachAbout(cell, other -> sum(own, first, other, variance, timesProducts));
                }
            }
        }
    }

    private void sum(int cell, int one, int otherCell, double variance, double timesProducts) {
        double east = basis.points.east(basis.order[one]);
        double north = basis.points.north(basis.order[one]);
        double product = timesProducts * residuals[one];
        double reach = sums.length * CLASS_METRES;
        int from = otherCell == cell ? one + 1 : basis.firsts[otherCell];
        for (int other = from; other < basis.firsts[otherCell + 1]; other++) {
            double dx = basis.points.east(basis.order[other]) - east;
            double dy = basis.points.north(basis.order[other]) - north;
            double square = dx * dx + dy * dy;
            if (counting[other] && square <= reach * reach) {
                int place = (int) Math.min(sums.length - 1, Math.sqrt(square) / CLASS_METRES);
                sums[place] += product * residuals[other] + variance * leverages.with(otherCell, other);
                counts[place]++;
            }
        }
    }

    /** What was summed of some points' pairs stands for all of them; the products come from the lattice. */
    private void sumByLattice() {
        ResidualLattice lattice = new ResidualLattice(basis, residuals, counting, sums.length);
        for (int place = 0; place < sums.length; place++) {
            double mean = counts[place] > 0 ? sums[place] / counts[place] : 0;
            sums[place] = lattice.products[place] + mean * lattice.counts[place];
            counts[place] = lattice.counts[place];
        }
    }
}
