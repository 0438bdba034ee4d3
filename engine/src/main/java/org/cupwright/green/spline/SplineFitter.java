package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
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
    private Steps steps;

    private SplineFitter(SurveyPoints points, KnotGrid grid, FitSettings settings) {
        this.points = points;
        this.grid = grid;
        this.settings = settings;
        this.datumMetres = middleHeight(points);
        this.kept = new boolean[points.count()];
        Arrays.fill(kept, true);
        this.steps = Steps.none(grid);
    }

    static FittedSpline fit(SurveyPoints points, KnotGrid grid, FitSettings settings) {
        return new SplineFitter(points, grid, settings).fit();
    }

    private static double middleHeight(SurveyPoints points) {
        double[] heights = new double[points.count()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = points.heightMetres(i);
        }
        return Quantiles.median(heights);
    }

    private FittedSpline fit() {
        FittedSpline coarse =
                settle(grid.coarser(COARSE), OptionalDouble.empty(), COARSE_LIMITS * settings.blunderLimit());
        // The penalty of a squared second derivative per area grows with the square of the spacing.
        double start = StrictMath.log(coarse.lambda * settings.penaltyDivisor() * COARSE * COARSE);
        FittedSpline even = settle(grid, OptionalDouble.of(start), settings.blunderLimit());
        Steps found = Steps.of(grid, withCompany(even).coefficients);
        StepChoice choice = new StepChoice(points, found, even);
        if (found.isNone() || choice.isFollowed()) {
            return even;
        }
        FittedSpline stepped = withSteps(found, even);
        return choice.isBetter(stepped) ? stepped : even;
    }

    /** The fit with the points taken back that lie far off in company: those of a step do. */
    private FittedSpline withCompany(FittedSpline even) {
        double[] residuals = even.equations.residuals(even.coefficients);
        boolean[] all = kept.clone();
        Company company = new Company(points, residuals, kept);
        for (int i = 0; i < all.length; i++) {
            all[i] |= company.has(i);
        }
        return Arrays.equals(all, kept)
                ? even
                : new FittedSpline(new NormalEquations(even.equations.basis, all, datumMetres, steps), even.lambda);
    }

    /** The fit again with the penalty taken off at the steps; their points come back to be judged by it. */
    private FittedSpline withSteps(Steps found, FittedSpline even) {
        steps = found;
        for (int i = 0; i < kept.length; i++) {
            kept[i] |= steps.isNear(points.east(i), points.north(i));
        }
        KnotGrid fine = grid.finer(settings.stepSpacingMetres());
        double finer = grid.spacingMetres() / fine.spacingMetres();
        double near = StrictMath.log(even.lambda * settings.penaltyDivisor() * finer * finer);
        return settle(fine, OptionalDouble.of(near), settings.blunderLimit());
    }

    /**
     * Leaves out blunders until the same points are left out twice.
     *
     * @param start where the best ln λ is looked for first
     */
    private FittedSpline settle(KnotGrid knots, OptionalDouble start, double limit) {
        PointBasis basis = new PointBasis(knots, points);
        OptionalDouble near = start;
        FittedSpline fitted = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            NormalEquations equations = new NormalEquations(basis, kept, datumMetres, steps);
            RestrictedLikelihood likelihood = new RestrictedLikelihood(equations);
            double lnLambda = near.isPresent() ? likelihood.bestNear(near.getAsDouble()) : likelihood.best();
            near = OptionalDouble.of(lnLambda);
            fitted = new FittedSpline(equations, StrictMath.exp(lnLambda) / settings.penaltyDivisor());
            double[] residuals = equations.residuals(fitted.coefficients);
            boolean[] within = within(residuals, limit);
            takeBackSound(residuals, within, limit * evenSigma(residuals));
            Steps suited = steps.isNone() ? steps : steps.reweighted(knots, fitted.coefficients);
            if (Arrays.equals(within, kept) && suited.isAlike(steps)) {
                break;
            }
            kept = within;
            steps = suited;
        }
        return fitted;
    }

    private boolean[] within(double[] residuals, double limit) {
        double even = evenSigma(residuals);
        double atStep = Math.max(even, robustSigma(residuals, true));
        boolean[] within = new boolean[residuals.length];
        for (int i = 0; i < residuals.length; i++) {
            within[i] = Math.abs(residuals[i]) <= limit * (isAtStep(i) ? atStep : even);
        }
        return within;
    }

    /**
     * At a step no point is a blunder, however far off, that stands in company or no higher and no lower than those
     * about it: the surface cannot follow, and its neighbours do not contradict it.
     */
    private void takeBackSound(double[] residuals, boolean[] within, double roomMetres) {
        if (!steps.isNone()) {
            Company company = new Company(points, residuals, within);
            for (int i = 0; i < within.length; i++) {
                within[i] |= steps.isNear(points.east(i), points.north(i))
                        && (company.has(i) || company.spans(i, roomMetres));
            }
        }
    }

    private double evenSigma(double[] residuals) {
        double least =
                Math.max(LEAST_BLUNDER_SIGMA_METRES, points.givenSigmaMetres().orElse(0));
        return Math.max(least, robustSigma(residuals, false));
    }

    private boolean isAtStep(int point) {
        return steps.at(points.east(point), points.north(point));
    }

    /**
     * The standard deviation that a quantile of the absolute residuals stands for when they are normal: 1.4826 times
     * their median; at a step, where the surface misses by more at some places than at most, from nine tenths of them.
     */
    private double robustSigma(double[] residuals, boolean atStep) {
        double[] sizes = IntStream.range(0, residuals.length)
                .filter(i -> kept[i] && isAtStep(i) == atStep)
                .mapToDouble(i -> Math.abs(residuals[i]))
                .toArray();
        if (sizes.length == 0) {
            return 0;
        }
        return atStep ? Quantiles.at((int) (0.9 * sizes.length), sizes) / 1.6449 : 1.4826 * Quantiles.median(sizes);
    }
}
