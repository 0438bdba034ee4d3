package org.cupwright.green.spline;

import java.util.List;

/** The products d d' of directions in the space of the coefficients, as covariances at the nodes of a disc's. */
final class DirectionProducts {
    private static final int PER_CELL = DiscCovariances.NODES_PER_CELL;

    private final DiscCovariances nodes;
    private final double[][] directions;
    private final boolean fromKnots;
    private final double[][] atKnots;

    DirectionProducts(DiscCovariances nodes, List<double[]> directions) {
        this(nodes, SharedDirections.rows(directions), false);
    }

    private DirectionProducts(DiscCovariances nodes, double[][] directions, boolean fromKnots) {
        this.nodes = nodes;
        this.directions = directions;
        this.fromKnots = fromKnots;
        this.atKnots = new double[nodes.count()][];
    }

    /** The same, worked out at the knots alone and taken to lie between them elsewhere. */
    DirectionProducts fromKnots() {
        return new DirectionProducts(nodes, directions, true);
    }

    /** The entries at a node that is known. */
    double[] at(int node) {
        if (!fromKnots) {
            return nodes.products(node, directions);
        }
        int column = node / nodes.rows;
        int row = node % nodes.rows;
        int west = column - column % PER_CELL;
        int south = row - row % PER_CELL;
        int east = west + (column > west ? PER_CELL : 0);
        int north = south + (row > south ? PER_CELL : 0);
        int[] knots = {
            west * nodes.rows + south, west * nodes.rows + north, east * nodes.rows + south, east * nodes.rows + north
        };
        double[] mean = new double[DiscCovariances.SIZE];
        for (int knot : knots) {
            if (!nodes.fits(knot)) {
                return nodes.products(node, directions);
            }
            double[] entries = atKnot(knot);
            for (int k = 0; k < mean.length; k++) {
                mean[k] += entries[k] / knots.length;
            }
        }
        return mean;
    }

    private double[] atKnot(int knot) {
        if (atKnots[knot] == null) {
            atKnots[knot] = nodes.products(knot, directions);
        }
        return atKnots[knot];
    }
}
