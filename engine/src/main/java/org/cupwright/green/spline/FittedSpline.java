package org.cupwright.green.spline;

/**
 * A spline fitted with one penalty, with the factor of its normal equations; lives only as long as covariances are read
 * off.
 */
final class FittedSpline {
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

    /** Residual standard deviation, with the effective parameters taken off the number of points. */
    double residualSigma(double effectiveParameters) {
        double free = Math.max(1, equations.count - effectiveParameters);
        return Math.sqrt(equations.residualSum(coefficients) / free);
    }
}
