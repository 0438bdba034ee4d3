package org.cupwright.green.spline;

import java.util.Arrays;
import org.cupwright.green.DiscQuadrature;

/**
 * The disc's five functionals as weights on the coefficients, for spots that lie alike within their knot cell.
 *
 * <p>Spots a quarter metre apart on knots half a metre apart have four such patterns.
 */
final class Pattern {
    private final int firstColumn;
    private final int firstRow;
    private final int window;

    /** weights[f][a·window + b]: of the coefficient a columns and b rows from the first. */
    private final double[][] weights;

    /**
     * @param t where the spot lies in its cell from west, 0…1
     * @param s where it lies from south
     */
    Pattern(DiscQuadrature disc, double spacing, double t, double s) {
        int reach = (int) Math.ceil(disc.radiusMetres() / spacing);
        this.firstColumn = -reach;
        this.firstRow = -reach;
        this.window = 2 * reach + 4;
        this.weights = new double[5][window * window];
        double[] bx = new double[4];
        double[] by = new double[4];
        for (int node = 0; node < disc.nodes(); node++) {
            double x = t + disc.dx(node) / spacing;
            double y = s + disc.dy(node) / spacing;
            int column = (int) Math.floor(x);
            int row = (int) Math.floor(y);
            CubicBasis.values(x - column, bx);
            CubicBasis.values(y - row, by);
            for (int f = 0; f < 5; f++) {
                for (int a = 0; a < 4; a++) {
                    for (int b = 0; b < 4; b++) {
                        int at = (column - firstColumn + a) * window + row - firstRow + b;
                        weights[f][at] += disc.part(f, node) * bx[a] * by[b];
                    }
                }
            }
        }
    }

    /** The covariances of the five functionals (5 × 5, row by row) in units of σ²; NaN where the disc leaves the knots. */
    double[] covariance(Knots knots, SelectedInverse inverse, int column, int row) {
        double[] result = new double[25];
        int[] number = numbers(knots, column, row);
        if (number.length == 0) {
            Arrays.fill(result, Double.NaN);
            return result;
        }
        double[] entries = inverse.entries();
        double[] through = new double[5];
        for (int i = 0; i < number.length; i++) {
            if (number[i] < 0) {
                continue;
            }
            Arrays.fill(through, 0);
            int at = inverse.row(number[i]);
            for (int j = 0; j < number.length; j++) {
                if (number[j] >= 0) {
                    double entry = entries[at + number[j]];
                    for (int f = 0; f < 5; f++) {
                        through[f] += entry * weights[f][j];
                    }
                }
            }
            for (int f = 0; f < 5; f++) {
                for (int g = 0; g < 5; g++) {
                    result[5 * f + g] += weights[f][i] * through[g];
                }
            }
        }
        return result;
    }

    /** Coefficient numbers of the window; −1 where all weights are zero; empty where a needed one does not exist. */
    private int[] numbers(Knots knots, int column, int row) {
        int[] number = new int[window * window];
        for (int a = 0; a < window; a++) {
            for (int b = 0; b < window; b++) {
                int at = a * window + b;
                int c = column + firstColumn + a;
                int r = row + firstRow + b;
                boolean used = false;
                for (double[] weight : weights) {
                    used |= weight[at] != 0;
                }
                boolean exists = c >= 0 && r >= 0 && c < knots.coefficientColumns() && r < knots.coefficientRows();
                if (used && !exists) {
                    return new int[0];
                }
                number[at] = used ? knots.index(c, r) : -1;
            }
        }
        return number;
    }

    /** Coefficients in a row or column that a disc can touch: how wide the selected inverse must be. */
    static int window(DiscQuadrature disc, double spacing) {
        return (int) Math.ceil(2 * disc.radiusMetres() / spacing) + 4;
    }
}
