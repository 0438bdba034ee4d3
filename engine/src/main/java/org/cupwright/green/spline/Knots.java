package org.cupwright.green.spline;

/**
 * Equally spaced knots over a rectangle, and the numbering of the coefficients: along the shorter side first, which keeps the
 * band narrow.
 *
 * @param west left edge, m, course frame
 * @param south lower edge
 * @param spacing distance between knots, m
 * @param columns cells from west to east
 * @param rows cells from south to north
 */
record Knots(double west, double south, double spacing, int columns, int rows) {
    static Knots over(double west, double south, double east, double north, double spacing) {
        int columns = Math.max(4, (int) Math.ceil((east - west) / spacing));
        int rows = Math.max(4, (int) Math.ceil((north - south) / spacing));
        return new Knots(west, south, spacing, columns, rows);
    }

    int coefficientColumns() {
        return columns + 3;
    }

    int coefficientRows() {
        return rows + 3;
    }

    int size() {
        return coefficientColumns() * coefficientRows();
    }

    boolean columnsFirst() {
        return coefficientColumns() <= coefficientRows();
    }

    /** Number of the coefficient at a column and row. */
    int index(int column, int row) {
        return columnsFirst() ? row * coefficientColumns() + column : column * coefficientRows() + row;
    }

    /** Greatest difference of the numbers of two coefficients within a window of so many columns and rows. */
    int bandWidth(int window) {
        int shorter = Math.min(coefficientColumns(), coefficientRows());
        return (window - 1) * shorter + window - 1;
    }

    double along(double east) {
        return (east - west) / spacing;
    }

    double up(double north) {
        return (north - south) / spacing;
    }

    int cell(double position, int cells) {
        return Math.min(cells - 1, Math.max(0, (int) Math.floor(position)));
    }
}
