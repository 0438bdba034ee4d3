package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * Sums over the points of one cell: products of its splines with each other and with the heights. A spline is a product
 * of one towards east and one towards north, so ten products of each direction make all 136.
 */
final class CellProducts {
    private static final int PAIRS = 10;

    /** The place of a pair of splines of one direction among the ten. */
    private static final int[][] PAIR = {{0, 1, 2, 3}, {1, 4, 5, 6}, {2, 5, 7, 8}, {3, 6, 8, 9}};

    private final double[] products = new double[PAIRS * PAIRS];
    private final double[] heights = new double[16];
    private final double[] east = new double[PAIRS];
    private final double[] north = new double[PAIRS];

    void clear() {
        Arrays.fill(products, 0);
        Arrays.fill(heights, 0);
    }

    /** @param at where the point's eight values start, as {@link PointBasis} has them */
    void add(double[] values, int at, double height) {
        pairs(values, at, east);
        pairs(values, at + 4, north);
        for (int i = 0; i < PAIRS; i++) {
            for (int j = 0; j < PAIRS; j++) {
                products[PAIRS * i + j] += east[i] * north[j];
            }
        }
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                heights[4 * a + b] += height * values[at + a] * values[at + 4 + b];
            }
        }
    }

    private static void pairs(double[] v, int at, double[] out) {
        int place = 0;
        for (int a = 0; a < 4; a++) {
            for (int b = a; b < 4; b++) {
                out[place++] = v[at + a] * v[at + b];
            }
        }
    }

    /** Adds the sums to normal equations. */
    void addTo(BandMatrix gram, double[] right, int[] indices) {
        for (int a = 0; a < 16; a++) {
            right[indices[a]] += heights[a];
            for (int b = 0; b < 16; b++) {
                if (indices[b] <= indices[a]) {
                    double sum = products[PAIRS * PAIR[a / 4][b / 4] + PAIR[a % 4][b % 4]];
                    gram.add(indices[a], indices[b], sum);
                }
            }
        }
    }
}
