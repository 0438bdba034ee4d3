package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cupwright.green.Sharing;

/**
 * Errors that neighbouring points share over the ground, with covariance σ²·exp(−d²/2ℓ²), as independent standard
 * normal parts: the pivoted Cholesky factor of the covariance between the places of the coefficients (Harbrecht, Peters
 * and Schneider, Applied Numerical Mathematics 62, 2012), stopped when little is left.
 */
final class SharedField {
    /** So much of a height's variance may be left out at any place (our choice: slopes lose a thousandth). */
    private static final double LEFT = 1e-3;

    /**
     * Squares of the length that are told apart (our choice: keeps a fit within seconds). On wider ground the length is
     * taken longer and the amplitude greater, which leaves the error of a slope as it is.
     */
    private static final double MOST_SQUARES = 150;

    private final KnotGrid grid;
    private final double lengthMetres;
    private final double[] left;
    private final List<double[]> columns = new ArrayList<>();

    private SharedField(KnotGrid grid, double lengthMetres) {
        this.grid = grid;
        this.lengthMetres = lengthMetres;
        this.left = new double[grid.coefficients()];
        Arrays.fill(left, 1);
    }

    /** One standard deviation of each part as a surface: its coefficients, m. */
    static List<double[]> parts(KnotGrid grid, Sharing sharing) {
        double square = grid.cellsEast() * grid.cellsNorth() * grid.spacingMetres() * grid.spacingMetres();
        double length = Math.max(sharing.lengthMetres(), Math.sqrt(square / MOST_SQUARES));
        double sigma = sharing.sigmaMetres() * length / sharing.lengthMetres();
        SharedField field = new SharedField(grid, length);
        int pivot = field.greatest();
        while (field.left[pivot] > LEFT) {
            field.take(pivot);
            pivot = field.greatest();
        }
        return field.columns.stream()
                .map(column -> SharedDirections.times(sigma, column))
                .toList();
    }

    private int greatest() {
        int greatest = 0;
        for (int i = 1; i < left.length; i++) {
            greatest = left[i] > left[greatest] ? i : greatest;
        }
        return greatest;
    }

    private void take(int pivot) {
        double root = Math.sqrt(left[pivot]);
        double[] column = likenesses(pivot);
        takeOffBefore(pivot, column);
        for (int i = 0; i < column.length; i++) {
            column[i] /= root;
            left[i] -= column[i] * column[i];
        }
        left[pivot] = 0;
        columns.add(column);
    }

    private void takeOffBefore(int pivot, double[] column) {
        int k = 0;
        for (; k + 4 <= columns.size(); k += 4) {
            double[] one = columns.get(k);
            double[] two = columns.get(k + 1);
            double[] three = columns.get(k + 2);
            double[] four = columns.get(k + 3);
            Rows.subtract(
                    column, one[pivot], one, two[pivot], two, three[pivot], three, four[pivot], four, 0, column.length);
        }
        for (; k < columns.size(); k++) {
            Rows.subtract(column, columns.get(k)[pivot], columns.get(k), 0, column.length);
        }
    }

    /** Correlation of every coefficient's place with the pivot's: a product of one towards east and one north. */
    private double[] likenesses(int pivot) {
        double[] column = new double[left.length];
        int pivotEast = pivot / grid.strideEast() % grid.coefficientsEast();
        int pivotNorth = pivot / grid.strideNorth() % grid.coefficientsNorth();
        double[] byNorth = fading(pivotNorth, grid.coefficientsNorth());
        double[] byEast = fading(pivotEast, grid.coefficientsEast());
        for (int east = 0; east < byEast.length; east++) {
            for (int north = 0; north < byNorth.length; north++) {
                column[grid.index(east, north)] = byEast[east] * byNorth[north];
            }
        }
        return column;
    }

    private double[] fading(int from, int count) {
        double[] fading = new double[count];
        for (int i = 0; i < count; i++) {
            double lengths = (i - from) * grid.spacingMetres() / lengthMetres;
            fading[i] = StrictMath.exp(-lengths * lengths / 2);
        }
        return fading;
    }
}
