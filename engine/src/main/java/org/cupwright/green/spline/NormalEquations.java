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

    final PointBasis basis;

    private final boolean[] kept;
    private final BandMatrix gram;
    private final double[] right;

    /** Without steps. */
    NormalEquations(KnotGrid grid, SurveyPoints points, boolean[] kept, double datumMetres) {
        this(new PointBasis(grid, points), kept, datumMetres, Steps.none(grid));
    }

    /**
     * @param kept which of the points count
     * @param steps where the penalty is less
     */
    NormalEquations(PointBasis basis, boolean[] kept, double datumMetres, Steps steps) {
        this.basis = basis;
        this.grid = basis.grid;
        this.points = basis.points;
        this.kept = kept.clone();
        this.datumMetres = datumMetres;
        this.penalty = new DifferencePenalty(grid, steps.weights(grid));
        this.steps = steps;
        this.gram = new BandMatrix(grid.coefficients(), grid.halfBandwidth(3));
        this.right = new double[gram.length];
        this.count = sum();
        for (int i = 0; i < gram.order; i++) {
            gram.add(i, i, RIDGE);
        }
    }

    /** Sums over the points that count, cell by cell; how many they are. */
    private int sum() {
        CellProducts products = new CellProducts();
        int[] indices = new int[16];
        int counted = 0;
        for (int cell = 0; cell < basis.cells(); cell++) {
            products.clear();
            int before = counted;
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                int point = basis.order[place];
                if (kept[point]) {
                    products.add(basis.values, PointBasis.SIZE * place, points.heightMetres(point) - datumMetres);
                    counted++;
                }
            }
            if (counted > before) {
                basis.coefficients(cell, indices);
                products.addTo(gram, right, indices);
            }
        }
        return counted;
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
        int[] indices = new int[16];
        for (int cell = 0; cell < basis.cells(); cell++) {
            basis.coefficients(cell, indices);
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                double height = kept[basis.order[place]] ? heights[basis.order[place]] : 0;
                for (int a = 0; a < 16 && height != 0; a++) {
                    int at = PointBasis.SIZE * place;
                    response[indices[a]] += basis.values[at + a / 4] * basis.values[at + 4 + a % 4] * height;
                }
            }
        }
        return response;
    }

    /** B'BC: what surfaces at the points would put on the right side; a row for each coefficient. */
    double[][] responseToSurfaces(double[][] coefficients) {
        int count = coefficients[0].length;
        double[][] response = new double[right.length][count];
        gram.forEach((row, column, value) -> {
            Rows.subtract(response[row], -value, coefficients[column], 0, count);
            if (column != row) {
                Rows.subtract(response[column], -value, coefficients[row], 0, count);
            }
        });
        return response;
    }

    /** What is done with a point and its residual. */
    private interface Residual {
        void visit(int point, double residual);
    }

    private void forEachResidual(double[] coefficients, Residual residual) {
        int[] indices = new int[16];
        double[] about = new double[16];
        for (int cell = 0; cell < basis.cells(); cell++) {
            basis.coefficients(cell, indices);
            for (int a = 0; a < 16; a++) {
                about[a] = coefficients[indices[a]];
            }
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                int point = basis.order[place];
                residual.visit(point, points.heightMetres(point) - datumMetres - basis.sum(place, about, 0, 4));
            }
        }
    }

    /** Height less fitted height of every point, those that do not count included. */
    double[] residuals(double[] coefficients) {
        double[] residuals = new double[kept.length];
        forEachResidual(coefficients, (point, residual) -> residuals[point] = residual);
        return residuals;
    }

    boolean isKept(int point) {
        return kept[point];
    }

    /** Whether a point counts and lies at no step. */
    boolean countsOffSteps(int point) {
        return kept[point] && !steps.at(points.east(point), points.north(point));
    }

    /** Sum of the squared residuals of the points that count. */
    double residualSum(double[] coefficients) {
        double[] sum = new double[1];
        forEachResidual(coefficients, (point, residual) -> sum[0] += kept[point] ? residual * residual : 0);
        return sum[0];
    }
}
