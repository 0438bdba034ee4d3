package org.cupwright.green.spline;

import java.util.Optional;
import org.cupwright.green.SurveyPoints;

/**
 * Penalised tensor-product cubic B-splines through noisy heights (P-splines: Eilers & Marx, Statistical Science 11, 1996).
 *
 * <p>Minimises |z − Bc|² + λ·cᵀPc, P the sum of squared second differences of the coefficients in both directions. λ is that of
 * restricted maximum likelihood, then divided: REML alone smooths steps away, and its intervals miss there.
 */
final class PenalisedSpline {
    /** Dimension of what the penalty leaves free: 1, x, y and xy. */
    private static final int FREE = 4;

    private static final double LEAST_LOG = -3;
    private static final double GREATEST_LOG = 4;
    private static final double LOG_TOLERANCE = 0.25;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Knots knots;
    private final int points;
    private final Band normal;
    private final Band penalty;
    private final double[] right;
    private final double squares;

    /** Sets up the normal equations for points, heights less a mean. */
    PenalisedSpline(Knots knots, SurveyPoints survey, double meanHeight) {
        this.knots = knots;
        this.points = survey.size();
        this.normal = new Band(knots.size(), knots.bandWidth(4));
        this.penalty = penalty(knots);
        this.right = new double[knots.size()];
        double sum = 0;
        double[] bx = new double[4];
        double[] by = new double[4];
        int[] number = new int[16];
        double[] basis = new double[16];
        for (int i = 0; i < points; i++) {
            window(survey.east(i), survey.north(i), bx, by, number, basis);
            double z = survey.height(i) - meanHeight;
            sum += z * z;
            for (int a = 0; a < 16; a++) {
                right[number[a]] += basis[a] * z;
                for (int b = 0; b <= a; b++) {
                    normal.add(number[a], number[b], basis[a] * basis[b]);
                }
            }
        }
        this.squares = sum;
    }

    private void window(double east, double north, double[] bx, double[] by, int[] number, double[] basis) {
        double x = knots.along(east);
        double y = knots.up(north);
        int column = knots.cell(x, knots.columns());
        int row = knots.cell(y, knots.rows());
        CubicBasis.values(x - column, bx);
        CubicBasis.values(y - row, by);
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                number[4 * a + b] = knots.index(column + a, row + b);
                basis[4 * a + b] = bx[a] * by[b];
            }
        }
    }

    private static Band penalty(Knots knots) {
        Band sum = new Band(knots.size(), knots.bandWidth(4));
        for (int row = 0; row < knots.coefficientRows(); row++) {
            for (int column = 1; column < knots.coefficientColumns() - 1; column++) {
                second(sum, knots.index(column - 1, row), knots.index(column, row), knots.index(column + 1, row));
            }
        }
        for (int column = 0; column < knots.coefficientColumns(); column++) {
            for (int row = 1; row < knots.coefficientRows() - 1; row++) {
                second(sum, knots.index(column, row - 1), knots.index(column, row), knots.index(column, row + 1));
            }
        }
        return sum;
    }

    private static void second(Band sum, int before, int at, int after) {
        sum.add(before, before, 1);
        sum.add(at, at, 4);
        sum.add(after, after, 1);
        sum.add(before, at, -2);
        sum.add(at, after, -2);
        sum.add(before, after, 1);
    }

    /** A solution for one λ. */
    static final class Solution {
        private final double[] coefficients;
        private final BandCholesky cholesky;
        private final double penalisedSquares;

        Solution(double[] coefficients, BandCholesky cholesky, double penalisedSquares) {
            this.coefficients = coefficients;
            this.cholesky = cholesky;
            this.penalisedSquares = penalisedSquares;
        }

        double[] coefficients() {
            return coefficients;
        }

        BandCholesky cholesky() {
            return cholesky;
        }

        /** |z − Bc|² + λ·cᵀPc. */
        double penalisedSquares() {
            return penalisedSquares;
        }
    }

    /** The solution for a λ; empty when the points do not determine it. */
    Optional<Solution> solve(double lambda) {
        return normal.plus(lambda, penalty).cholesky().map(cholesky -> {
            double[] c = cholesky.solve(right);
            double fitted = 0;
            for (int i = 0; i < c.length; i++) {
                fitted += c[i] * right[i];
            }
            return new Solution(c, cholesky, Math.max(squares - fitted, 1e-12 * squares + 1e-18));
        });
    }

    /** Minus twice the restricted log likelihood at log₁₀ λ, up to a constant, σ² profiled out; infinite where undetermined. */
    double criterion(double logLambda) {
        double lambda = StrictMath.pow(10, logLambda);
        return solve(lambda)
                .map(at -> at.cholesky().logDeterminant()
                        - (knots.size() - FREE) * StrictMath.log(lambda)
                        + (points - FREE) * StrictMath.log(at.penalisedSquares()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** λ of restricted maximum likelihood, by golden section on its logarithm. */
    double remlLambda() {
        double low = LEAST_LOG;
        double high = GREATEST_LOG;
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = criterion(a);
        double atB = criterion(b);
        while (high - low > LOG_TOLERANCE) {
            if (atA <= atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = criterion(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = criterion(b);
            }
        }
        return StrictMath.pow(10, (low + high) / 2);
    }

    /** Effective number of parameters of a solution: tr(A⁻¹B'B). */
    double effectiveParameters(SelectedInverse inverse) {
        double trace = 0;
        for (int i = 0; i < normal.size(); i++) {
            for (int j = i; j <= Math.min(normal.size() - 1, i + normal.width()); j++) {
                double entry = normal.get(i, j);
                if (entry != 0) {
                    trace += (i == j ? 1 : 2) * entry * inverse.get(i, j);
                }
            }
        }
        return trace;
    }
}
