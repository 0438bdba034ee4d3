package org.cupwright.green.spline;

/**
 * The sum of squared second differences of the coefficients along both directions; planes (and the twist xy) cost
 * nothing. At a step each counts for less.
 */
final class DifferencePenalty {
    /** Dimension of what the penalty leaves free: 1, x, y and xy. */
    static final int FREE_DIMENSIONS = 4;

    private static final int[] DIFFERENCE = {1, -2, 1};

    private final KnotGrid grid;
    private final double[] weights;

    /** The same all over. */
    DifferencePenalty(KnotGrid grid) {
        this(grid, Steps.none(grid).weights(grid));
    }

    /**
     * @param weights by how much the differences about each coefficient are multiplied, once squared
     */
    DifferencePenalty(KnotGrid grid, double[] weights) {
        this.grid = grid;
        this.weights = weights;
    }

    /** What is done with one triple of neighbours: its first coefficient and the step to the next. */
    private interface Triple {
        void visit(int first, int step);
    }

    private void forEach(Triple triple) {
        for (int i = 0; i < grid.coefficientsEast(); i++) {
            for (int j = 0; j < grid.coefficientsNorth(); j++) {
                if (i + 2 < grid.coefficientsEast()) {
                    triple.visit(grid.index(i, j), grid.strideEast());
                }
                if (j + 2 < grid.coefficientsNorth()) {
                    triple.visit(grid.index(i, j), grid.strideNorth());
                }
            }
        }
    }

    /** Adds the penalty, so many times, to normal equations. */
    void addTo(BandMatrix matrix, double lambda) {
        forEach((first, step) -> {
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b <= a; b++) {
                    double times = lambda * weights[first + step];
                    matrix.add(first + a * step, first + b * step, times * DIFFERENCE[a] * DIFFERENCE[b]);
                }
            }
        });
    }

    /** c'Pc. */
    double of(double[] coefficients) {
        double[] sum = new double[1];
        forEach((first, step) -> {
            double difference = coefficients[first] - 2 * coefficients[first + step] + coefficients[first + 2 * step];
            sum[0] += weights[first + step] * difference * difference;
        });
        return sum[0];
    }

    /** tr(S P) for a symmetric S of which the entries near the diagonal are known. */
    double traceWith(SelectedInverse inverse) {
        double[] sum = new double[1];
        forEach((first, step) -> {
            double weight = weights[first + step];
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    sum[0] += weight * DIFFERENCE[a] * DIFFERENCE[b] * inverse.get(first + a * step, first + b * step);
                }
            }
        });
        return sum[0];
    }
}
