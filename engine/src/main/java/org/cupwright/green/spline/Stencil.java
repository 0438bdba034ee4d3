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
    /** Room for so many quantities: sums of all of them are made together. */
    private static final int MOST = 5;

    private final int[] indices;
    private final double[][] weights;
    /** The same, {@link #MOST} for each index, with zeros where there are fewer quantities. */
    private final double[] together;

    private Stencil(int[] indices, double[][] weights) {
        this.indices = indices;
        this.weights = weights;
        this.together = new double[MOST * indices.length];
        for (int row = 0; row < weights.length; row++) {
            for (int i = 0; i < indices.length; i++) {
                together[MOST * i + row] = weights[row][i];
            }
        }
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

    /** W D, with D a row for each coefficient and as many columns as there are directions; row by row. */
    double[][] times(double[][] directions, int corner) {
        double[][] products = new double[weights.length][directions[0].length];
        for (int row = 0; row < products.length; row++) {
            int i = 0;
            for (; i + 4 <= indices.length; i += 4) {
                subtractFour(products[row], weights[row], i, directions, corner);
            }
            for (; i < indices.length; i++) {
                Rows.subtract(
                        products[row], -weights[row][i], directions[corner + indices[i]], 0, products[row].length);
            }
        }
        return products;
    }

    private void subtractFour(double[] product, double[] w, int i, double[][] directions, int corner) {
        Rows.subtract(
                product,
                -w[i],
                directions[corner + indices[i]],
                -w[i + 1],
                directions[corner + indices[i + 1]],
                -w[i + 2],
                directions[corner + indices[i + 2]],
                -w[i + 3],
                directions[corner + indices[i + 3]],
                0,
                product.length);
    }

    /** W S W', with S the part of the inverse about the cell; row by row. */
    double[][] covariance(SelectedInverse inverse, int corner) {
        int rows = weights.length;
        double[][] sums = new double[rows][rows];
        double[] half = new double[MOST];
        for (int a = 0; a < indices.length; a++) {
            halfProducts(inverse, corner, a, half);
            for (int row = 0; row < rows; row++) {
                for (int other = row; other < rows; other++) {
                    sums[row][other] += together[MOST * a + row] * half[other] + together[MOST * a + other] * half[row];
                }
            }
        }
        for (int row = 0; row < rows; row++) {
            for (int other = 0; other < row; other++) {
                sums[row][other] = sums[other][row];
            }
        }
        return sums;
    }

    /** One row of S, its diagonal entry halved, from there on, times all weights. */
    private void halfProducts(SelectedInverse inverse, int corner, int a, double[] out) {
        double[] row = inverse.row(corner + indices[a]);
        double[] w = together;
        int[] slots = inverse.slots();
        double first = row[slots[corner + indices[a]]] / 2;
        double s0 = first * w[MOST * a];
        double s1 = first * w[MOST * a + 1];
        double s2 = first * w[MOST * a + 2];
        double s3 = first * w[MOST * a + 3];
        double s4 = first * w[MOST * a + 4];
        for (int i = a + 1; i < indices.length; i++) {
            double entry = row[slots[corner + indices[i]]];
            int at = MOST * i;
            s0 += entry * w[at];
            s1 += entry * w[at + 1];
            s2 += entry * w[at + 2];
            s3 += entry * w[at + 3];
            s4 += entry * w[at + 4];
        }
        out[0] = s0;
        out[1] = s1;
        out[2] = s2;
        out[3] = s3;
        out[4] = s4;
    }
}
