package org.cupwright.green;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Envelope;

/**
 * A number at every node of a square grid over the map: heights, slopes, anything that lines of equal value can be
 * drawn of.
 *
 * @param west east coordinate of the first column's nodes, m
 * @param south north coordinate of the first row's nodes, m
 * @param cellMetres distance between neighbouring nodes
 * @param columns nodes a row, from west to east
 * @param rows nodes a column, from south to north
 * @param values row by row from the south-west; NaN where unknown; copied on the way in and out
 */
public record ScalarGrid(double west, double south, double cellMetres, int columns, int rows, double[] values) {
    /**
     * So that a slip in the cell's size does not ask for a grid that fills the memory: our choice, a green of 500 m at
     * 0.25 m.
     */
    private static final int MOST_NODES = 4_000_000;

    public ScalarGrid {
        if (!Double.isFinite(west) || !Double.isFinite(south) || !(cellMetres > 0)) {
            throw new IllegalArgumentException(
                    "not a place for a grid: " + west + ", " + south + ", cells of " + cellMetres + " m");
        }
        if (columns < 2 || rows < 2 || values.length != (long) columns * rows) {
            throw new IllegalArgumentException(
                    "a grid of " + columns + " × " + rows + " nodes cannot hold " + values.length + " values");
        }
        values = values.clone();
    }

    /** Samples a function of (east, north) on a grid that covers an envelope with a cell to spare all round. */
    public static ScalarGrid sampled(Envelope envelope, double cellMetres, DoubleBinaryOperator function) {
        double columns = Math.ceil(envelope.getWidth() / cellMetres) + 3;
        double rows = Math.ceil(envelope.getHeight() / cellMetres) + 3;
        if (!(columns * rows <= MOST_NODES)) {
            throw new IllegalArgumentException("cells of " + cellMetres + " m over " + envelope + " make more than "
                    + MOST_NODES + " nodes. Maybe the cell is too small.");
        }
        double west = envelope.getMinX() - cellMetres;
        double south = envelope.getMinY() - cellMetres;
        double[] values = new double[(int) columns * (int) rows];
        for (int i = 0; i < values.length; i++) {
            double east = west + cellMetres * (i % (int) columns);
            double north = south + cellMetres * (i / (int) columns);
            values[i] = function.applyAsDouble(east, north);
        }
        return new ScalarGrid(west, south, cellMetres, (int) columns, (int) rows, values);
    }

    /** The heights of a surface over an envelope, m. */
    public static ScalarGrid heights(Surface surface, Envelope envelope, double cellMetres) {
        Jet jet = new Jet();
        return sampled(envelope, cellMetres, (east, north) -> {
            surface.at(east, north, jet);
            return jet.z;
        });
    }

    @Override
    public double[] values() {
        return values.clone();
    }

    public double value(int column, int row) {
        return values[row * columns + column];
    }

    public double east(int column) {
        return west + cellMetres * column;
    }

    public double north(int row) {
        return south + cellMetres * row;
    }

    /** Least, greatest and number of the known values. */
    public DoubleSummaryStatistics known() {
        return Arrays.stream(values).filter(Double::isFinite).summaryStatistics();
    }

    /** Whether both are the same grid with the same values, NaN equal to NaN. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ScalarGrid grid
                && west == grid.west
                && south == grid.south
                && cellMetres == grid.cellMetres
                && columns == grid.columns
                && rows == grid.rows
                && Arrays.equals(values, grid.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "ScalarGrid[" + columns + " × " + rows + " nodes, " + cellMetres + " m, from " + west + ", " + south
                + "]";
    }
}
