package org.cupwright.green.spline;

import java.util.Map;
import java.util.TreeMap;

/**
 * {@link HeightFunctionals} as weights of a spline's coefficients, for spots that lie alike within their cell.
 *
 * <p>Coefficients are numbered relative to the one of the cell's south-west corner, so that one stencil serves every
 * cell.
 */
final class Stencil {
    private final int[] indices;
    private final double[][] weights;

    private Stencil(int[] indices, double[][] weights) {
        this.indices = indices;
        this.weights = weights;
    }

    /**
     * @param east place within the cell, in cells, from its west side
     * @param north place within the cell, in cells, from its south side
     */
    static Stencil at(double east, double north, HeightFunctionals functionals, KnotGrid grid) {
        Map<Integer, double[]> byIndex = new TreeMap<>();
        double[] basisEast = new double[4];
        double[] basisNorth = new double[4];
        for (int i = 0; i < functionals.east.length; i++) {
            double x = east + functionals.east[i] / grid.spacingMetres();
            double y = north + functionals.north[i] / grid.spacingMetres();
            int cellEast = (int) Math.floor(x);
            int cellNorth = (int) Math.floor(y);
            CubicBasis.values(x - cellEast, basisEast);
            CubicBasis.values(y - cellNorth, basisNorth);
            for (int a = 0; a < 16; a++) {
                int index = grid.index(cellEast + a / 4, cellNorth + a % 4);
                double[] sums = byIndex.computeIfAbsent(index, none -> new double[functionals.rows()]);
                for (int row = 0; row < sums.length; row++) {
                    sums[row] += functionals.weights[row][i] * basisEast[a / 4] * basisNorth[a % 4];
                }
            }
        }
        return of(byIndex, functionals.rows());
    }

    private static Stencil of(Map<Integer, double[]> byIndex, int rows) {
        int[] indices = byIndex.keySet().stream().mapToInt(Integer::intValue).toArray();
        double[][] weights = new double[rows][indices.length];
        for (int i = 0; i < indices.length; i++) {
            for (int row = 0; row < rows; row++) {
                weights[row][i] = byIndex.get(indices[i])[row];
            }
        }
        return new Stencil(indices, weights);
    }

    int rows() {
        return weights.length;
    }

    /** One row applied to coefficients; the corner is the number of the cell's first coefficient. */
    double apply(int row, double[] coefficients, int corner) {
        double sum = 0;
        for (int i = 0; i < indices.length; i++) {
            sum += weights[row][i] * coefficients[corner + indices[i]];
        }
        return sum;
    }

    /** One row as a vector over all coefficients. */
    double[] spread(int row, int corner, int length) {
        double[] vector = new double[length];
        for (int i = 0; i < indices.length; i++) {
            vector[corner + indices[i]] = weights[row][i];
        }
        return vector;
    }

    /** W S W', with S the part of the inverse about the cell; row by row. */
    double[][] covariance(SelectedInverse inverse, int corner) {
        int rows = weights.length;
        double[][] sums = new double[rows][rows];
        double[] entries = new double[indices.length];
        double[] half = new double[rows];
        for (int a = 0; a < indices.length; a++) {
            inverse.copy(corner, a, indices, entries);
            entries[a] /= 2;
            for (int row = 0; row < rows; row++) {
                half[row] = dot(entries, weights[row], a);
            }
            addSymmetric(sums, half, a);
        }
        return sums;
    }

    private static double dot(double[] one, double[] other, int from) {
        double sum = 0;
        for (int i = from; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private void addSymmetric(double[][] sums, double[] half, int column) {
        for (int row = 0; row < half.length; row++) {
            for (int other = 0; other < half.length; other++) {
                sums[row][other] += weights[row][column] * half[other] + weights[other][column] * half[row];
            }
        }
    }
}
