package org.cupwright.green.spline;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/**
 * A spline as one bicubic polynomial a cell: the same surface, at the cost of a few multiplications.
 *
 * <p>Outside the knots it goes on along straight lines: height and slope across the edge stay continuous, and nothing
 * blows up. Those outer polynomials form a ring of cells of their own, so that evaluation knows no exception.
 */
public final class PolynomialSurface implements Surface {
    private static final int TERMS = 4;
    private static final int SIZE = TERMS * TERMS;

    private final double west;
    private final double south;
    private final double perMetre;
    private final int cellsEast;
    private final int cellsNorth;
    private final double datumMetres;
    /** Sixteen numbers a cell, factor of u^a v^b at 4a + b; the ring about the grid included. */
    private final double[] terms;

    PolynomialSurface(KnotGrid grid, double[] coefficients, double datumMetres) {
        this.west = grid.west();
        this.south = grid.south();
        this.perMetre = 1 / grid.spacingMetres();
        this.cellsEast = grid.cellsEast();
        this.cellsNorth = grid.cellsNorth();
        this.datumMetres = datumMetres;
        this.terms = new double[SIZE * (cellsEast + 2) * (cellsNorth + 2)];
        for (int i = 0; i < cellsEast; i++) {
            for (int j = 0; j < cellsNorth; j++) {
                convert(grid, coefficients, i, j);
            }
        }
        for (int j = 0; j < cellsNorth; j++) {
            continueEast(-1, j, 0, 0);
            continueEast(cellsEast, j, cellsEast - 1, 1);
        }
        for (int i = -1; i <= cellsEast; i++) {
            continueNorth(i, -1, 0, 0);
            continueNorth(i, cellsNorth, cellsNorth - 1, 1);
        }
    }

    private PolynomialSurface(DataInput in) throws IOException {
        this.west = in.readDouble();
        this.south = in.readDouble();
        this.perMetre = in.readDouble();
        this.datumMetres = in.readDouble();
        this.cellsEast = in.readInt();
        this.cellsNorth = in.readInt();
        this.terms = new double[SIZE * (cellsEast + 2) * (cellsNorth + 2)];
        for (int i = 0; i < terms.length; i++) {
            terms[i] = in.readDouble();
        }
    }

    /** A surface as {@link #write} wrote it, to the bit. */
    public static PolynomialSurface read(DataInput in) throws IOException {
        return new PolynomialSurface(in);
    }

    public void write(DataOutput out) throws IOException {
        out.writeDouble(west);
        out.writeDouble(south);
        out.writeDouble(perMetre);
        out.writeDouble(datumMetres);
        out.writeInt(cellsEast);
        out.writeInt(cellsNorth);
        for (double term : terms) {
            out.writeDouble(term);
        }
    }

    /** Where a cell's terms start; −1 and the number of cells are the ring. */
    private int start(int cellEast, int cellNorth) {
        return SIZE * ((cellEast + 1) * (cellsNorth + 2) + cellNorth + 1);
    }

    private void convert(KnotGrid grid, double[] coefficients, int cellEast, int cellNorth) {
        int at = start(cellEast, cellNorth);
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                double coefficient = coefficients[grid.index(cellEast + i, cellNorth + j)];
                for (int a = 0; a < TERMS; a++) {
                    for (int b = 0; b < TERMS; b++) {
                        terms[at + TERMS * a + b] += CubicBasis.POWERS[a][i] * CubicBasis.POWERS[b][j] * coefficient;
                    }
                }
            }
        }
    }

    /**
     * Fills a ring cell with what the neighbour's polynomial and its slope are on the side u. Its own u counts from
     * that side.
     */
    private void continueEast(int ring, int cellNorth, int neighbour, double u) {
        int to = start(ring, cellNorth);
        int from = start(neighbour, cellNorth);
        for (int b = 0; b < TERMS; b++) {
            double c1 = terms[from + TERMS + b];
            double c2 = terms[from + 2 * TERMS + b];
            double c3 = terms[from + 3 * TERMS + b];
            terms[to + b] = terms[from + b] + u * (c1 + u * (c2 + u * c3));
            terms[to + TERMS + b] = c1 + u * (2 * c2 + 3 * u * c3);
        }
    }

    private void continueNorth(int cellEast, int ring, int neighbour, double v) {
        int to = start(cellEast, ring);
        int from = start(cellEast, neighbour);
        for (int a = 0; a < SIZE; a += TERMS) {
            double c1 = terms[from + a + 1];
            double c2 = terms[from + a + 2];
            double c3 = terms[from + a + 3];
            terms[to + a] = terms[from + a] + v * (c1 + v * (c2 + v * c3));
            terms[to + a + 1] = c1 + v * (2 * c2 + 3 * v * c3);
        }
    }

    private static int cell(double x, int cells) {
        if (x < 0) {
            return -1;
        }
        return x > cells ? cells : Math.min((int) x, cells - 1);
    }

    @Override
    public void at(double east, double north, Jet out) {
        double x = (east - west) * perMetre;
        double y = (north - south) * perMetre;
        int i = cell(x, cellsEast);
        int j = cell(y, cellsNorth);
        double u = x - Math.max(i, 0);
        double v = y - Math.max(j, 0);
        double[] c = terms;
        int k = start(i, j);
        double z = 0;
        double zu = 0;
        double zuu = 0;
        double zv = 0;
        double zuv = 0;
        double zvv = 0;
        for (int a = k + SIZE - TERMS; a >= k; a -= TERMS) {
            double c3 = c[a + 3];
            double c2 = c[a + 2];
            double c1 = c[a + 1];
            zuu = zuu * u + 2 * zu;
            zu = zu * u + z;
            z = z * u + (c[a] + v * (c1 + v * (c2 + v * c3)));
            zuv = zuv * u + zv;
            zv = zv * u + (c1 + v * (2 * c2 + 3 * v * c3));
            zvv = zvv * u + (2 * c2 + 6 * v * c3);
        }
        out.z = z + datumMetres;
        out.zx = zu * perMetre;
        out.zy = zv * perMetre;
        out.zxx = zuu * perMetre * perMetre;
        out.zxy = zuv * perMetre * perMetre;
        out.zyy = zvv * perMetre * perMetre;
    }

    /** Height alone, above the datum near the mean height: small numbers, for sums. */
    double heightAboveDatum(double east, double north) {
        double x = (east - west) * perMetre;
        double y = (north - south) * perMetre;
        int i = cell(x, cellsEast);
        int j = cell(y, cellsNorth);
        double u = x - Math.max(i, 0);
        double v = y - Math.max(j, 0);
        double z = 0;
        int k = start(i, j);
        for (int a = k + SIZE - TERMS; a >= k; a -= TERMS) {
            z = z * u + (terms[a] + v * (terms[a + 1] + v * (terms[a + 2] + v * terms[a + 3])));
        }
        return z;
    }
}
