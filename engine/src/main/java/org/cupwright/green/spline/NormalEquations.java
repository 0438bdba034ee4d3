package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/**
 * The normal equations B'B c = B'y of a spline fitted to points, to which a penalty is added for each fit.
 *
 * <p>Heights count from a datum near their mean, so that nothing is lost to rounding on high ground.
 */
final class NormalEquations {
    /**
     * Added to the diagonal, in points: holds up what the points leave wholly open, above the rounding of the greatest
     * penalty and far below any noise (our choice).
     */
    private static final double RIDGE = 1e-7;

    final KnotGrid grid;
    final SurveyPoints points;
    final double datumMetres;
    final int count;
    final DifferencePenalty penalty;
    final Steps steps;

    private final boolean[] kept;
    private final BandMatrix gram;
    private final double[] right;
    private final double[] basisEast = new double[4];
    private final double[] basisNorth = new double[4];
    private final double[] products = new double[16];
    private final int[] indices = new int[16];

    /** Without steps. */
    NormalEquations(KnotGrid grid, SurveyPoints points, boolean[] kept, double datumMetres) {
        this(grid, points, kept, datumMetres, Steps.none(grid));
    }

    /**
     * @param kept which of the points count
     * @param steps where the penalty is less
     */
    NormalEquations(KnotGrid grid, SurveyPoints points, boolean[] kept, double datumMetres, Steps steps) {
        this.grid = grid;
        this.points = points;
        this.kept = kept.clone();
        this.datumMetres = datumMetres;
        this.penalty = new DifferencePenalty(grid, steps.weights(grid));
        this.steps = steps;
        this.gram = new BandMatrix(grid.coefficients(), grid.halfBandwidth(3));
        this.right = new double[gram.length];
        int counted = 0;
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                add(i);
                counted++;
            }
        }
        this.count = counted;
        for (int i = 0; i < gram.order; i++) {
            gram.add(i, i, RIDGE);
        }
    }

    private void add(int point) {
        locate(point);
        double height = points.heightMetres(point) - datumMetres;
        for (int a = 0; a < 16; a++) {
            right[indices[a]] += products[a] * height;
            for (int b = 0; b < 16; b++) {
                if (indices[b] <= indices[a]) {
                    gram.add(indices[a], indices[b], products[a] * products[b]);
                }
            }
        }
    }

    private void locate(int point) {
        double x = grid.cellsFromWest(points.east(point));
        double y = grid.cellsFromSouth(points.north(point));
        int cellEast = grid.cellEast(x);
        int cellNorth = grid.cellNorth(y);
        CubicBasis.values(x - cellEast, basisEast);
        CubicBasis.values(y - cellNorth, basisNorth);
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                indices[4 * a + b] = grid.index(cellEast + a, cellNorth + b);
                products[4 * a + b] = basisEast[a] * basisNorth[b];
            }
        }
    }

    /** The factor of B'B + λP. */
    BandCholesky factor(double lambda) {
        BandMatrix matrix = gram.copy();
        penalty.addTo(matrix, lambda);
        return new BandCholesky(matrix);
    }

    /** The coefficients that the factor gives for the heights. */
    double[] solve(BandCholesky factor) {
        return factor.solve(right);
    }

    /** B'h: what heights at the points, one for each, would put on the right side. */
    double[] response(double[] heights) {
        double[] response = new double[right.length];
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                locate(i);
                for (int a = 0; a < 16; a++) {
                    response[indices[a]] += products[a] * heights[i];
                }
            }
        }
        return response;
    }

    /** B'Bc: what the heights of a surface at the points would put on the right side. */
    double[] responseToSurface(double[] coefficients) {
        double[] response = new double[right.length];
        gram.forEach((row, column, value) -> {
            response[row] += value * coefficients[column];
            if (column != row) {
                response[column] += value * coefficients[row];
            }
        });
        return response;
    }

    /** Height less fitted height of every point, those that do not count included. */
    double[] residuals(double[] coefficients) {
        double[] residuals = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            locate(i);
            double fitted = 0;
            for (int a = 0; a < 16; a++) {
                fitted += products[a] * coefficients[indices[a]];
            }
            residuals[i] = points.heightMetres(i) - datumMetres - fitted;
        }
        return residuals;
    }

    /** The cell a point lies in and the sixteen splines there, towards north first. */
    record Basis(int cellEast, int cellNorth, double[] products) {}

    Basis basis(int point) {
        locate(point);
        int cellEast = grid.cellEast(grid.cellsFromWest(points.east(point)));
        int cellNorth = grid.cellNorth(grid.cellsFromSouth(points.north(point)));
        return new Basis(cellEast, cellNorth, products.clone());
    }

    boolean isKept(int point) {
        return kept[point];
    }

    /** Sum of the squared residuals of the points that count. */
    double residualSum(double[] coefficients) {
        double[] residuals = residuals(coefficients);
        double sum = 0;
        for (int i = 0; i < kept.length; i++) {
            sum += kept[i] ? residuals[i] * residuals[i] : 0;
        }
        return sum;
    }
}
