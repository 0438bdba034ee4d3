package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Blunder;
import org.cupwright.green.DiscQuadrature;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.Jet;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.SurveyTooThin;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Envelope;

/** Makes the surveyed ground of one green from its points: penalty, blunders, residuals, errors. */
public final class SurveyFit {
    /** How far outside the green points still help, m; our choice: a disc and a half. */
    public static final double MARGIN_METRES = 2;

    private static final int LEAST_POINTS = 12;
    private static final int MOST_ROUNDS = 3;
    private static final double FINE = 0.5;
    private static final double COARSE = 1.0;

    /** Points per square metre that bear the fine knots: about one for every two coefficients. */
    private static final double DENSE = 1.5;

    private final Outline outline;
    private final Policy policy;
    private final OptionalDouble gridCellMetres;
    private final OptionalDouble statedSigmaMetres;
    private final List<Blunder> blunders = new ArrayList<>();

    private SurveyFit(Outline outline, Policy policy, OptionalDouble gridCellMetres, OptionalDouble statedSigmaMetres) {
        this.outline = outline;
        this.policy = policy;
        this.gridCellMetres = gridCellMetres;
        this.statedSigmaMetres = statedSigmaMetres;
    }

    /**
     * The ground through scattered points.
     *
     * @param statedSigmaMetres noise of a height as stated with the survey; the residuals' is taken when it is greater
     */
    public static SurveyedGround toPoints(
            SurveyPoints points, Outline outline, OptionalDouble statedSigmaMetres, Policy policy)
            throws SurveyTooThin {
        return new SurveyFit(outline, policy, OptionalDouble.empty(), statedSigmaMetres).fit(points);
    }

    /** The ground through a grid of heights, whose errors its own residuals cannot show: σ is what is stated. */
    public static SurveyedGround toGrid(
            SurveyPoints points, Outline outline, double cellMetres, double sigmaMetres, Policy policy)
            throws SurveyTooThin {
        return new SurveyFit(outline, policy, OptionalDouble.of(cellMetres), OptionalDouble.of(sigmaMetres))
                .fit(points);
    }

    private SurveyedGround fit(SurveyPoints all) throws SurveyTooThin {
        Envelope box = new Envelope(outline.polygon().getEnvelopeInternal());
        box.expandBy(MARGIN_METRES);
        SurveyPoints near = all.keeping(i -> box.contains(all.east(i), all.north(i)));
        if (near.size() < LEAST_POINTS) {
            throw new SurveyTooThin(near.size(), LEAST_POINTS);
        }
        Knots knots = knots(box, near.size());
        return fit(near, knots, near.meanHeight());
    }

    private Knots knots(Envelope box, int points) {
        boolean dense = gridCellMetres.orElse(0) <= FINE && points / box.getArea() >= DENSE * 0.5;
        double spacing = dense ? FINE : COARSE;
        double west = Math.floor(box.getMinX() / spacing) * spacing;
        double south = Math.floor(box.getMinY() / spacing) * spacing;
        return Knots.over(west, south, box.getMaxX(), box.getMaxY(), spacing);
    }

    private SurveyedGround fit(SurveyPoints survey, Knots knots, double mean) throws SurveyTooThin {
        SurveyPoints kept = survey;
        double lambda = 0;
        PenalisedSpline spline = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            spline = new PenalisedSpline(knots, kept, mean);
            lambda = round == 0 ? spline.remlLambda() : lambda;
            SurveyPoints better = withoutBlunders(kept, knots, mean, solved(spline, lambda, kept));
            if (better.size() == kept.size()) {
                break;
            }
            kept = better; // a few points fewer hardly move the penalty
        }
        double divided = lambda / policy.get(GroundPolicy.PENALTY_DIVISOR);
        PenalisedSpline.Solution solution = solved(spline, divided, kept);
        return finish(kept, knots, mean, spline, solution);
    }

    private static PenalisedSpline.Solution solved(PenalisedSpline spline, double lambda, SurveyPoints points)
            throws SurveyTooThin {
        return spline.solve(lambda).orElseThrow(() -> new SurveyTooThin(points.size(), points.size()));
    }

    private SurveyPoints withoutBlunders(
            SurveyPoints points, Knots knots, double mean, PenalisedSpline.Solution solution) {
        double[] residuals = residuals(points, new SplineSurface(knots, solution.coefficients(), mean));
        double limit = policy.get(GroundPolicy.BLUNDER_LIMIT) * robustSigma(residuals);
        for (int i = 0; i < points.size(); i++) {
            if (Math.abs(residuals[i]) > limit) {
                blunders.add(
                        new Blunder(new MapPoint(points.east(i), points.north(i)), points.height(i), residuals[i]));
            }
        }
        return points.keeping(i -> Math.abs(residuals[i]) <= limit);
    }

    private static double[] residuals(SurveyPoints points, SplineSurface surface) {
        double[] residuals = new double[points.size()];
        Jet jet = new Jet();
        for (int i = 0; i < residuals.length; i++) {
            surface.at(points.east(i), points.north(i), jet);
            residuals[i] = points.height(i) - jet.z;
        }
        return residuals;
    }

    /** 1.4826 times the median size: the standard deviation of normal residuals, whatever the few worst do; never quite zero. */
    private static double robustSigma(double[] residuals) {
        double[] sizes = Arrays.stream(residuals).map(Math::abs).sorted().toArray();
        return Math.max(1.4826 * sizes[sizes.length / 2], 1e-6);
    }

    private SurveyedGround finish(
            SurveyPoints kept, Knots knots, double mean, PenalisedSpline spline, PenalisedSpline.Solution solution) {
        DiscQuadrature disc = new DiscQuadrature(Ground.DISC_RADIUS_METRES);
        int window = Pattern.window(disc, knots.spacing());
        SelectedInverse inverse = solution.cholesky().selectedInverse(knots.bandWidth(window));
        SplineSurface surface = new SplineSurface(knots, solution.coefficients(), mean);
        double squares = Arrays.stream(residuals(kept, surface)).map(r -> r * r).sum();
        double parameters = spline.effectiveParameters(inverse);
        double freedom = Math.max(1, kept.size() - parameters);
        double residual = Math.sqrt(squares / freedom);
        double sigma = Math.max(residual, statedSigmaMetres.orElse(0));
        PointIndex index = new PointIndex(kept, knots);
        CoverageRule rule = gridCellMetres.isPresent()
                ? CoverageRule.forGrid(gridCellMetres.getAsDouble())
                : CoverageRule.forPoints(policy);
        ErrorField errors = ErrorField.over(outline, knots, inverse, disc, index, rule, sigma);
        double ofDifference = sigma * Math.sqrt(2 * parameters / kept.size());
        return new SurveyedGround(
                surface, errors, index, disc, new SurveyedGround.Noise(sigma, residual, ofDifference), blunders);
    }
}
