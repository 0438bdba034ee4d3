package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.Once;
import org.cupwright.green.SurveyPoints;

/**
 * The surface fitted to a survey, with the covariances of what is read off it over discs.
 *
 * <p>The coefficients' covariance is σ²(B'B+λP)⁻¹ for the penalty in use. The large arrays live only while it is
 * computed; what stays is the surface, the points, and covariances at nodes half a cell apart. Immutable and safe for
 * use by several threads; covariances over wider discs are computed when first asked for, on knots that are wider by as
 * much as the disc is.
 */
public final class SurveySpline {
    private final SurveyPoints used;
    private final List<LeftOut> leftOut;
    private final KnotGrid grid;
    private final double datumMetres;
    private final Steps steps;
    private final SplineSummary summary;
    private final Nodes nodes;
    private final MeasuredSharing sharing;
    private final DiscCovariances ofFit;
    private final List<SlopeObservation> observations;
    private final MeasuredSharing measuredSharing;
    private final PolynomialSurface surface;
    private final Map<Double, Once<CovarianceParts>> byRadius = new ConcurrentHashMap<>();

    /** The rectangle a surface must cover, metres, course frame. */
    public record Area(double west, double south, double east, double north) {}

    /**
     * Where covariances are kept: at nodes near which enough points lie.
     *
     * @param discRadiusMetres the disc whose covariances are computed with the fit
     * @param withinMetres distance from a spot within which its points are counted
     * @param leastPoints how many there must be
     */
    public record Nodes(double discRadiusMetres, double withinMetres, int leastPoints) {}

    /** A point that the fit left out, by its number, and how far it lies above the surface. */
    public record LeftOut(int point, double residualMetres) {}

    /**
     * Fits a survey.
     *
     * @param points enough points, not on one line
     * @param sharing what they share of their errors; the surface does not depend on it
     */
    public static SurveySpline fit(
            SurveyPoints points, Area area, FitSettings settings, Nodes nodes, MeasuredSharing sharing) {
        KnotGrid grid = KnotGrid.covering(area.west, area.south, area.east, area.north, settings.knotSpacingMetres());
        return new SurveySpline(points, SplineFitter.fit(points, grid, settings), nodes, sharing);
    }

    private SurveySpline(SurveyPoints points, FittedSpline fitted, Nodes nodes, MeasuredSharing sharing) {
        NormalEquations equations = fitted.equations;
        this.used = points.where(equations::isKept);
        this.leftOut = leftOut(fitted);
        this.grid = equations.grid;
        this.datumMetres = equations.datumMetres;
        this.steps = equations.steps;
        this.nodes = nodes;
        this.sharing = sharing;
        this.observations = List.of();
        this.measuredSharing = sharing;
        this.surface = new PolynomialSurface(grid, fitted.coefficients, datumMetres);
        HeightFunctionals disc = HeightFunctionals.overDisc(nodes.discRadiusMetres);
        SelectedInverse inverse = fitted.inverse(disc);
        List<double[]> shared = SharedDirections.of(fitted, sharing.counts());
        this.summary = summary(fitted, inverse, shared);
        DiscCovariances even = DiscCovariances.of(grid, disc, inverse, summary.variance(), wanted(grid))
                .plus(relief(disc, fitted, inverse));
        this.ofFit = steps.isNone() ? even : even.plus(misfit(fitted));
        byRadius.put(nodes.discRadiusMetres, Once.known(new CovarianceParts(ofFit.plus(shared), ofFit)));
    }

    private SurveySpline(SurveySpline before, List<SlopeObservation> observations) {
        this.used = before.used;
        this.leftOut = before.leftOut;
        this.grid = before.grid;
        this.datumMetres = before.datumMetres;
        this.steps = before.steps;
        this.summary = before.summary;
        this.nodes = before.nodes;
        this.sharing = before.sharing;
        this.ofFit = before.ofFit;
        this.observations = List.copyOf(observations);
        ObservedFit observed = observed(refit(1));
        this.measuredSharing = observed.measured().sharing();
        this.surface = new PolynomialSurface(grid, observed.whole().coefficients, datumMetres);
        byRadius.put(nodes.discRadiusMetres, Once.known(observed.parts(ofFit)));
    }

    /** A grid's nodes may have been smoothed together: their residuals say nothing about relief. */
    private double[] relief(HeightFunctionals disc, FittedSpline fitted, SelectedInverse inverse) {
        return used.givenSigmaMetres().isPresent()
                ? new double[DiscCovariances.SIZE]
                : UnresolvedRelief.over(disc, fitted, inverse, summary.variance());
    }

    private StepMisfit misfit(FittedSpline fitted) {
        double[] all = fitted.equations.residuals(fitted.coefficients);
        double[] residuals = IntStream.range(0, all.length)
                .filter(fitted.equations::isKept)
                .mapToDouble(point -> all[point])
                .toArray();
        return new StepMisfit(new PointIndex(used), residuals, steps, nodes.discRadiusMetres(), summary.variance());
    }

    private static List<LeftOut> leftOut(FittedSpline fitted) {
        double[] residuals = fitted.equations.residuals(fitted.coefficients);
        return IntStream.range(0, residuals.length)
                .filter(point -> !fitted.equations.isKept(point))
                .mapToObj(point -> new LeftOut(point, residuals[point]))
                .toList();
    }

    private SplineSummary summary(FittedSpline fitted, SelectedInverse inverse, List<double[]> shared) {
        double effective = fitted.effectiveParameters(inverse);
        double least = Math.max(
                SplineFitter.LEAST_SIGMA_METRES, used.givenSigmaMetres().orElse(0));
        double sigma = Math.max(least, fitted.residualSigma(inverse));
        double difference = HeightDifferences.typicalError(grid, inverse, sigma * sigma, shared, wanted(grid));
        return new SplineSummary(used.count(), grid.spacingMetres(), fitted.lambda, sigma, effective, difference);
    }

    /** Every node that a spot with enough points can interpolate from. */
    private DiscCovariances.Wanted wanted(KnotGrid knots) {
        PointIndex index = new PointIndex(used);
        double reach = nodes.withinMetres + Math.sqrt(2) * knots.spacingMetres() / DiscCovariances.NODES_PER_CELL;
        return (east, north) -> index.holds(nodes.leastPoints, east, north, reach);
    }

    /** The same fit again, on knots so many times as far apart; its penalty falls with the square of the spacing. */
    private FittedSpline refit(int timesSpacing) {
        return refit(timesSpacing, used);
    }

    FittedSpline refit(int timesSpacing, SurveyPoints points) {
        KnotGrid knots = timesSpacing == 1 ? grid : grid.coarser(timesSpacing);
        boolean[] all = new boolean[used.count()];
        Arrays.fill(all, true);
        NormalEquations equations = new NormalEquations(new PointBasis(knots, points), all, datumMetres, steps);
        return new FittedSpline(equations, summary.lambda() / (timesSpacing * timesSpacing));
    }

    private ObservedFit observed(FittedSpline fitted) {
        return ObservedFit.of(fitted, summary.variance(), nodes.discRadiusMetres(), observations, sharing);
    }

    /** The spline after slopes were measured on the spot, besides those it has taken in already. */
    public SurveySpline with(List<SlopeObservation> more) {
        List<SlopeObservation> all = new ArrayList<>(observations);
        all.addAll(more);
        return new SurveySpline(this, all);
    }

    /**
     * What is read over a disc about a spot: the plane's gradient (east, north), then the quadratic's second
     * derivatives (east², east·north, north²).
     */
    public double[] valuesOverDisc(double radiusMetres, double east, double north) {
        DiscCovariances covariances = covariances(radiusMetres).whole();
        double[] values = covariances.functionals().of(surface, east, north);
        double[] corrections = covariances.correctionAt(east, north);
        for (int k = 0; k < values.length; k++) {
            values[k] += corrections[k];
        }
        return values;
    }

    /**
     * Covariances of {@link #valuesOverDisc}: the plane's three (east², east·north, north²), then the upper triangle of
     * the quadratic's, row by row; NaN where too few points lie near.
     */
    public double[] covarianceOverDisc(double radiusMetres, double east, double north) {
        return covariances(radiusMetres).whole().at(east, north);
    }

    /** The part of {@link #covarianceOverDisc} that would be left if points shared nothing of their observed. */
    public double[] ownCovarianceOverDisc(double radiusMetres, double east, double north) {
        return covariances(radiusMetres).own().at(east, north);
    }

    /** What the points share, and how that is known. */
    public MeasuredSharing sharing() {
        return measuredSharing;
    }

    /** How slopes at any two spots hang together, observations included. */
    public SlopeTies slopeTies() {
        FittedSpline fitted = refit(1);
        ObservedFit observed = observed(fitted);
        return new SlopeTies(
                fitted,
                summary.variance(),
                nodes.discRadiusMetres(),
                observed.measured().directions(),
                observed.whole().directions);
    }

    /** Errors of the heights; computed anew, some tenths of a second. */
    public HeightErrors heightErrors() {
        FittedSpline fitted = refit(1);
        ObservedFit observed = observed(fitted);
        return new HeightErrors(
                fitted, summary.variance(), observed.measured().directions(), observed.whole().directions);
    }

    private CovarianceParts covariances(double radiusMetres) {
        return byRadius.computeIfAbsent(radiusMetres, radius -> new Once<>(() -> computeCovariances(radius)))
                .value();
    }

    private CovarianceParts computeCovariances(double radiusMetres) {
        int times = (int) Math.max(1, Math.floor(radiusMetres / nodes.discRadiusMetres));
        FittedSpline fitted = refit(times);
        KnotGrid knots = fitted.equations.grid;
        HeightFunctionals disc = HeightFunctionals.overDisc(radiusMetres);
        return observed(fitted)
                .parts(DiscCovariances.of(knots, disc, fitted.inverse(disc), summary.variance(), wanted(knots)));
    }

    /** Whether the ground steps somewhere. */
    public boolean hasSteps() {
        return !steps.isNone();
    }

    /** Whether the ground steps at a place itself. */
    public boolean isAtStep(double east, double north) {
        return steps.isInMidst(east, north);
    }

    /** Whether a place lies at a step or just beside it. */
    public boolean isBesideStep(double east, double north) {
        return steps.at(east, north);
    }

    public PolynomialSurface surface() {
        return surface;
    }

    public SplineSummary summary() {
        return summary;
    }

    public List<LeftOut> leftOut() {
        return leftOut;
    }

    /** The points that counted. */
    public SurveyPoints used() {
        return used;
    }

    /** Whether a disc about a spot lies on the knots, with room for the nodes about the spot. */
    public boolean holdsDisc(double east, double north, double radiusMetres) {
        return grid.holdsDisc(east, north, radiusMetres + grid.spacingMetres() / DiscCovariances.NODES_PER_CELL);
    }
}
