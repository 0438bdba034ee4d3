package org.cupwright.green.spline;

/**
 * A spline fitted with one penalty, with the factor of its normal equations; lives only as long as covariances are read
 * off.
 */
final class FittedSpline {
    /** Degrees of freedom from which a standard deviation can be told (our choice). */
    private static final double LEAST_FREE = 30;

    final NormalEquations equations;
    final double lambda;
    final BandCholesky factor;
    final double[] coefficients;

    FittedSpline(NormalEquations equations, double lambda) {
        this.equations = equations;
        this.lambda = lambda;
        this.factor = equations.factor(lambda);
        this.coefficients = equations.solve(factor);
    }

    SelectedInverse inverse(HeightFunctionals functionals) {
        KnotGrid grid = equations.grid;
        return new SelectedInverse(factor, grid.halfBandwidth(functionals.coefficientsApart(grid.spacingMetres())));
    }

    /** How many parameters the fit has used up: tr((B'B+λP)⁻¹ B'B) = p − λ tr((B'B+λP)⁻¹ P). */
    double effectiveParameters(SelectedInverse inverse) {
        return equations.grid.coefficients() - lambda * equations.penalty.traceWith(inverse);
    }

    /**
     * Residual standard deviation, with the effective parameters taken off the number of points. Points at steps are
     * left aside, with the parameters that they use up, as long as there are others enough: the surface misses there.
     *
     * @param inverse of any width
     */
    double residualSigma(SelectedInverse inverse) {
        if (equations.steps.isNone()) {
            return residualSigma(effectiveParameters(inverse));
        }
        double[] residuals = equations.residuals(coefficients);
        Leverages leverages = new Leverages(equations, inverse, 0);
        PointBasis basis = equations.basis;
        double squares = 0;
        double free = 0;
        for (int cell = 0; cell < basis.cells(); cell++) {
            for (int place = basis.firsts[cell]; place < basis.firsts[cell + 1]; place++) {
                int point = basis.order[place];
                if (equations.countsOffSteps(point)) {
                    leverages.about(cell, place);
                    squares += residuals[point] * residuals[point];
                    free += 1 - leverages.with(cell, place);
                }
            }
        }
        return free > LEAST_FREE ? Math.sqrt(squares / free) : residualSigma(effectiveParameters(inverse));
    }

    /** Residual standard deviation, with the effective parameters taken off the number of points. */
    double residualSigma(double effectiveParameters) {
        double free = Math.max(1, equations.count - effectiveParameters);
        return Math.sqrt(equations.residualSum(coefficients) / free);
    }
}
