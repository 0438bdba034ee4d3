package org.cupwright.benchmarks;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/**
 * A surface made of one bicubic polynomial for each square cell, as a fitted spline's is: Hermite interpolation of
 * another surface's heights, slopes and twists (the second mixed derivative) at the cells' corners. Continuous height
 * and slope.
 */
final class PatchSurface implements Surface {
    private static final int TERMS = 16;

    /**
     * From values and derivatives at 0 and 1 (value 0, value 1, derivative 0, derivative 1) to the powers'
     * coefficients.
     */
    private static final double[][] HERMITE = {
        {1, 0, 0, 0},
        {0, 0, 1, 0},
        {-3, 3, -2, -1},
        {2, -2, 1, 1},
    };

    private final double west;
    private final double south;
    private final double cellMetres;
    private final int columns;
    private final int rows;

    /** For each cell 16 coefficients: the power of north runs slowest. */
    private final double[] coefficients;

    /** @param sideMetres of the square about the origin that the patches cover; beyond, the outermost patches go on */
    PatchSurface(Surface like, double sideMetres, double cellMetres) {
        this.west = -sideMetres / 2;
        this.south = -sideMetres / 2;
        this.cellMetres = cellMetres;
        this.columns = (int) Math.ceil(sideMetres / cellMetres);
        this.rows = columns;
        this.coefficients = new double[columns * rows * TERMS];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                fit(like, column, row);
            }
        }
    }

    private void fit(Surface like, int column, int row) {
        double[][] corners = new double[4][4];
        Jet jet = new Jet();
        for (int up = 0; up < 2; up++) {
            for (int right = 0; right < 2; right++) {
                like.at(west + (column + right) * cellMetres, south + (row + up) * cellMetres, jet);
                corners[up][right] = jet.z;
                corners[up][right + 2] = jet.zx * cellMetres;
                corners[up + 2][right] = jet.zy * cellMetres;
                corners[up + 2][right + 2] = jet.zxy * cellMetres * cellMetres;
            }
        }
        int start = (row * columns + column) * TERMS;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                coefficients[start + 4 * i + j] = coefficient(corners, i, j);
            }
        }
    }

    private static double coefficient(double[][] corners, int northPower, int eastPower) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                sum += HERMITE[northPower][i] * corners[i][j] * HERMITE[eastPower][j];
            }
        }
        return sum;
    }

    @Override
    public void at(double east, double north, Jet out) {
        double across = (east - west) / cellMetres;
        double up = (north - south) / cellMetres;
        int column = Math.min(columns - 1, Math.max(0, (int) across));
        int row = Math.min(rows - 1, Math.max(0, (int) up));
        int start = (row * columns + column) * TERMS;
        double s = across - column;
        double t = up - row;
        double perCell = 1 / cellMetres;
        double z = 0;
        double zs = 0;
        double zss = 0;
        double zt = 0;
        double zst = 0;
        double ztt = 0;
        for (int k = start + 12; k >= start; k -= 4) {
            double c3 = coefficients[k + 3];
            double c2 = coefficients[k + 2];
            double c1 = coefficients[k + 1];
            double rowValue = ((c3 * s + c2) * s + c1) * s + coefficients[k];
            double rowFirst = (3 * c3 * s + 2 * c2) * s + c1;
            ztt = ztt * t + 2 * zt;
            zt = zt * t + z;
            z = z * t + rowValue;
            zst = zst * t + zs;
            zs = zs * t + rowFirst;
            zss = zss * t + 6 * c3 * s + 2 * c2;
        }
        out.z = z;
        out.zx = zs * perCell;
        out.zy = zt * perCell;
        out.zxx = zss * perCell * perCell;
        out.zxy = zst * perCell * perCell;
        out.zyy = ztt * perCell * perCell;
    }
}
