package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.cupwright.green.SurveyPoints;

/**
 * Fits a spline to points: penalty by restricted likelihood and then a part of it, blunders left out.
 *
 * <p>A coarse fit takes out what lies far off; the points beside a gross blunder, which it drags along, come back when
 * the next fit agrees with them. The fine fit then applies the stated limit.
 */
final class SplineFitter {
    /** Knots of the coarse fit are so many times as far apart. */
    private static final int COARSE = 2;

    /**
     * The coarse fit may itself be off by some standard deviations on a steep step: only gross blunders go (our
     * choice).
     */
    private static final double COARSE_LIMITS = 3;

    /** Rounds after which the set of points is taken as it is (our choice; two are usual). */
    private static final int MOST_ROUNDS = 5;

    /** Least standard deviation of a height, m (our choice): a survey of turf is no better than a millimetre. */
    static final double LEAST_SIGMA_METRES = 0.001;

    /**
     * Least robust deviation to call blunders by, m (our choice): at a sharp step the surface itself is off by
     * millimetres.
     */
    private static final double LEAST_BLUNDER_SIGMA_METRES = 0.005;

    private final SurveyPoints points;
    private final KnotGrid grid;
    private final FitSettings settings;
    private final double datumMetres;
    private boolean[] kept;

    private SplineFitter(SurveyPoints points, KnotGrid grid, FitSettings settings) {
        this.points = points;
        this.grid = grid;
        this.settings = settings;
        this.datumMetres = middleHeight(points);
        this.kept = new boolean[points.count()];
        Arrays.fill(kept, true);
    }

    static FittedSpline fit(SurveyPoints points, KnotGrid grid, FitSettings settings) {
        return new SplineFitter(points, grid, settings).fit();
    }

    private static double middleHeight(SurveyPoints points) {
        double[] heights = new double[points.count()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = points.heightMetres(i);
        }
        return median(heights);
    }

    private FittedSpline fit() {
        FittedSpline coarse =
                settle(grid.coarser(COARSE), OptionalDouble.empty(), COARSE_LIMITS * settings.blunderLimit());
        // The penalty of a squared second derivative per area grows with the square of the spacing.
        double start = StrictMath.log(coarse.lambda * settings.penaltyDivisor() * COARSE * COARSE);
        return settle(grid, OptionalDouble.of(start), settings.blunderLimit());
    }

    /**
     * Leaves out blunders until the same points are left out twice.
     *
     * @param start where the best ln λ is looked for first
     */
    private FittedSpline settle(KnotGrid knots, OptionalDouble start, double limit) {
        OptionalDouble near = start;
        FittedSpline fitted = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            NormalEquations equations = new NormalEquations(knots, points, kept, datumMetres);
            RestrictedLikelihood likelihood = new RestrictedLikelihood(equations);
            double lnLambda = near.isPresent() ? likelihood.bestNear(near.getAsDouble()) : likelihood.best();
            near = OptionalDouble.of(lnLambda);
            fitted = new FittedSpline(equations, StrictMath.exp(lnLambda) / settings.penaltyDivisor());
            boolean[] within = within(equations.residuals(fitted.coefficients), limit);
            if (Arrays.equals(within, kept)) {
                break;
            }
            kept = within;
        }
        return fitted;
    }

    private boolean[] within(double[] residuals, double limit) {
        double least =
                Math.max(LEAST_BLUNDER_SIGMA_METRES, points.givenSigmaMetres().orElse(0));
        double sigma = Math.max(least, robustSigma(residuals));
        boolean[] within = new boolean[residuals.length];
        for (int i = 0; i < residuals.length; i++) {
            within[i] = Math.abs(residuals[i]) <= limit * sigma;
        }
        return within;
    }

    /** 1.4826 times the median absolute residual: the standard deviation when they are normal. */
    private double robustSigma(double[] residuals) {
        double[] sizes = new double[residuals.length];
        int count = 0;
        for (int i = 0; i < residuals.length; i++) {
            if (kept[i]) {
                sizes[count++] = Math.abs(residuals[i]);
            }
        }
        return 1.4826 * median(Arrays.copyOf(sizes, count));
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
