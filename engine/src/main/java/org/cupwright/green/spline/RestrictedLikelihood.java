package org.cupwright.green.spline;

import java.util.HashMap;
import java.util.Map;

/**
 * The restricted likelihood (REML) of a penalty, with the noise profiled out, and where it is greatest.
 *
 * <p>The P-spline is read as a mixed model (Eilers & Marx 1996; Patterson & Thompson, Biometrika 58, 1971): minus twice
 * the log likelihood is, up to a constant, (n−4)·ln(s) + ln det(B'B+λP) − (p−4)·ln λ, where s = |y−Bc|² + λc'Pc, n
 * counts points, p coefficients and 4 is the dimension that the penalty leaves free. Both determinants come from the
 * factor; no trace is needed.
 */
final class RestrictedLikelihood {
    /**
     * Bounds of ln λ (our choice): a step of a third of a metre measured to a millimetre, and a plane for all
     * purposes.
     */
    static final double LEAST = -12;

    static final double GREATEST = 12;

    /**
     * A survey's heights are written to a tenth of a millimetre at best: keeps the logarithm finite on exact heights.
     */
    private static final double HEIGHT_STEP_METRES = 1e-4;

    private static final double SCAN_STEP = 2;
    private static final double STEP = 1;

    private final NormalEquations equations;
    private final Map<Double, Double> known = new HashMap<>();

    RestrictedLikelihood(NormalEquations equations) {
        this.equations = equations;
    }

    /** Minus twice the restricted log likelihood, up to a constant. */
    double at(double lnLambda) {
        return known.computeIfAbsent(lnLambda, this::compute);
    }

    private double compute(double lnLambda) {
        double lambda = StrictMath.exp(lnLambda);
        BandCholesky factor = equations.factor(lambda);
        double[] coefficients = equations.solve(factor);
        double penalised = equations.residualSum(coefficients) + lambda * equations.penalty.of(coefficients);
        int free = Math.max(1, equations.count - DifferencePenalty.FREE_DIMENSIONS);
        int bound = equations.grid.coefficients() - DifferencePenalty.FREE_DIMENSIONS;
        double floor = free * HEIGHT_STEP_METRES * HEIGHT_STEP_METRES / 12;
        return free * StrictMath.log(penalised + floor) + factor.logDeterminant() - bound * lnLambda;
    }

    /** The best ln λ between the bounds, found without a starting value; for grids that are cheap to factor. */
    double best() {
        double best = LEAST;
        for (double x = LEAST; x <= GREATEST; x += SCAN_STEP) {
            best = at(x) < at(best) ? x : best;
        }
        return bestNear(best);
    }

    /**
     * The best ln λ near a starting value: walks downhill and ends at the lowest point of a parabola, good to about
     * 0.1.
     */
    double bestNear(double start) {
        double x = Math.min(Math.max(start, LEAST + STEP), GREATEST - STEP);
        while (at(x + STEP) < at(x) && x + 2 * STEP <= GREATEST) {
            x += STEP;
        }
        while (at(x - STEP) < at(x) && x - 2 * STEP >= LEAST) {
            x -= STEP;
        }
        double slope = (at(x + STEP) - at(x - STEP)) / 2;
        double bend = at(x + STEP) - 2 * at(x) + at(x - STEP);
        double move = bend > 0 ? -slope / bend : -Math.signum(slope);
        return x + Math.min(Math.max(move, -1), 1) * STEP;
    }
}
