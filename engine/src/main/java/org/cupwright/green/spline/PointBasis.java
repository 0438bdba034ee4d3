package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/**
 * The points of a survey in the cells of a grid of knots: in which order they come cell by cell, and the values of the
 * four splines towards east and the four towards north that are not zero at each. Worked out once a grid.
 */
final class PointBasis {
    /** Values kept for each point. */
    static final int SIZE = 8;

    final KnotGrid grid;
    final SurveyPoints points;
    /** Numbers of the points, cell by cell. */
    final int[] order;

    /** For each cell, {@link #cell}, the place of its first point in the order; one more at the end. */
    final int[] firsts;

    /** By place in the order: four values towards east, four towards north. */
    final double[] values;

    PointBasis(KnotGrid grid, SurveyPoints points) {
        this.grid = grid;
        this.points = points;
        int[] cells = new int[points.count()];
        this.firsts = new int[grid.cellsEast() * grid.cellsNorth() + 1];
        for (int i = 0; i < cells.length; i++) {
            int east = grid.cellEast(grid.cellsFromWest(points.east(i)));
            cells[i] = cell(east, grid.cellNorth(grid.cellsFromSouth(points.north(i))));
            firsts[cells[i] + 1]++;
        }
        for (int cell = 1; cell < firsts.length; cell++) {
            firsts[cell] += firsts[cell - 1];
        }
        this.order = new int[cells.length];
        this.values = new double[SIZE * cells.length];
        int[] next = firsts.clone();
        for (int i = 0; i < cells.length; i++) {
            int place = next[cells[i]]++;
            order[place] = i;
            CubicBasis.values(grid.cellsFromWest(points.east(i)) - cellEast(cells[i]), values, SIZE * place);
            CubicBasis.values(grid.cellsFromSouth(points.north(i)) - cellNorth(cells[i]), values, SIZE * place + 4);
        }
    }

    private int cell(int cellEast, int cellNorth) {
        return cellEast * grid.cellsNorth() + cellNorth;
    }

    int cellEast(int cell) {
        return cell / grid.cellsNorth();
    }

    int cellNorth(int cell) {
        return cell % grid.cellsNorth();
    }

    int cells() {
        return firsts.length - 1;
    }

    /** The number of the a-th towards east and b-th towards north of a cell's splines at 4a + b. */
    void coefficients(int cell, int[] indices) {
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                indices[4 * a + b] = grid.index(cellEast(cell) + a, cellNorth(cell) + b);
            }
        }
    }

    /** The sum of a point's sixteen splines, by its place in the order, times numbers that start at a place. */
    double sum(int place, double[] factors, int from, int strideEast) {
        double[] v = values;
        int n = SIZE * place + 4;
        double sum = 0;
        for (int a = 0; a < 4; a++) {
            int at = from + a * strideEast;
            double north = v[n] * factors[at]
                    + v[n + 1] * factors[at + 1]
                    + v[n + 2] * factors[at + 2]
                    + v[n + 3] * factors[at + 3];
            sum += v[n - 4 + a] * north;
        }
        return sum;
    }
}
