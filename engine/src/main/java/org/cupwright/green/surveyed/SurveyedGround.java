package org.cupwright.green.surveyed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.ErrorParts;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelReadings;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Sharing;
import org.cupwright.green.SharingPolicy;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.green.spline.SlopeObservation;
import org.cupwright.green.spline.SplineSummary;
import org.cupwright.green.spline.SurveySpline;
import org.cupwright.policy.Policy;

/**
 * The ground of a green that was surveyed: a smooth surface fitted to the points, with standard errors from the fit
 * alone.
 *
 * <p>The surface is a penalised tensor-product cubic B-spline (Eilers and Marx 1996). A position's plane and its change
 * of slope are the least-squares plane and quadratic to that surface over a disc. Blunders are left out and kept to be
 * shown. A level reading counts for what it is worth beside the survey: the spline is conditioned on it; in a gap of
 * the survey it stands alone for its own reach. So it does where the survey still contradicts it when it is taken in:
 * the person saw the ground, and a survey can be wrong in ways that its errors do not know of. Standard errors have two
 * parts: each point's own, and what neighbouring points share ({@link Sharing}). Strips of the survey measure that, and
 * five readings; those also show whether the whole survey is tilted or domed, and then correct it.
 */
public final class SurveyedGround implements Ground {
    /**
     * √(−2 ln 0.001): a reading with two equal errors is farther off than so many of them once in a thousand (our
     * choice).
     */
    private static final double OVERRULING_ERRORS = 3.717;

    private final SurveySpline spline;
    private final PointIndex index;
    private final SurveyCoverage coverage;
    private final List<Blunder> blunders;
    private final LevelReadings readings;
    private final LevelReadings overruling;

    private SurveyedGround(
            SurveySpline spline,
            PointIndex index,
            SurveyCoverage coverage,
            List<Blunder> blunders,
            LevelReadings readings) {
        this.spline = spline;
        this.index = index;
        this.coverage = coverage;
        this.blunders = List.copyOf(blunders);
        this.readings = readings;
        this.overruling = new LevelReadings(
                readings.readings().stream().filter(this::isOverruling).toList(), readings.reachMetres());
    }

    /** Whether the surface, the reading taken in, is still off it by more than chance allows. */
    private boolean isOverruling(LevelReading reading) {
        if (!isSurveyed(reading.place())) {
            return false;
        }
        double[] values = spline.valuesOverDisc(
                DISC_RADIUS_METRES, reading.place().east(), reading.place().north());
        double off = Math.hypot(values[0] - reading.gradientEast(), values[1] - reading.gradientNorth());
        return off > OVERRULING_ERRORS * reading.standardError();
    }

    /**
     * Fits the ground of one green.
     *
     * @param outline the green; points beyond its margin do not count
     * @param survey points of this green, or of the whole course; their kind tells what they share of their errors
     * @throws SurveyTooThin when there is nothing to fit; the green is then known by its outline only
     */
    public static SurveyedGround fit(Outline outline, SurveyPoints survey, Policy policy) throws SurveyTooThin {
        SurveyPoints points = SurveyArea.pointsNear(outline, survey, policy.get(GroundPolicy.MARGIN_METRES));
        SurveyCoverage coverage = SurveyCoverage.of(points, policy);
        SurveyArea.check(points, coverage, policy);
        SurveySpline.Nodes nodes =
                new SurveySpline.Nodes(DISC_RADIUS_METRES, coverage.withinMetres(), coverage.leastPoints());
        SurveySpline.Area area = SurveyArea.rectangle(outline, points);
        SurveySpline spline = fitted(points, area, policy, nodes);
        LevelReadings none = new LevelReadings(List.of(), policy.get(GroundPolicy.READING_REACH_METRES));
        return new SurveyedGround(spline, new PointIndex(spline.used()), coverage, blunders(points, spline), none);
    }

    private static SurveySpline fitted(
            SurveyPoints points, SurveySpline.Area area, Policy policy, SurveySpline.Nodes nodes) throws SurveyTooThin {
        try {
            return SurveySpline.fit(
                    points,
                    area,
                    SurveyArea.settings(points, area, policy),
                    nodes,
                    SharingPolicy.known(points, policy));
        } catch (ArithmeticException unsolvable) {
            throw new SurveyTooThin(SurveyTooThin.Reason.NO_FIT, points.count(), 0, 0);
        }
    }

    private static List<Blunder> blunders(SurveyPoints points, SurveySpline spline) {
        return spline.leftOut().stream()
                .map(point -> new Blunder(
                        new MapPoint(points.east(point.point()), points.north(point.point())),
                        points.heightMetres(point.point()),
                        point.residualMetres()))
                .toList();
    }

    /** This ground after slopes were read with a level, besides the readings it has taken in already. */
    public SurveyedGround withReadings(List<LevelReading> more) {
        List<LevelReading> all = new ArrayList<>(readings.readings());
        all.addAll(more);
        List<SlopeObservation> observations = more.stream()
                .filter(reading -> isSurveyed(reading.place()))
                .map(SurveyedGround::observation)
                .toList();
        return new SurveyedGround(
                observations.isEmpty() ? spline : spline.with(observations),
                index,
                coverage,
                blunders,
                new LevelReadings(all, readings.reachMetres()));
    }

    private static SlopeObservation observation(LevelReading reading) {
        return new SlopeObservation(
                reading.place().east(),
                reading.place().north(),
                reading.gradientEast(),
                reading.gradientNorth(),
                reading.standardError());
    }

    @Override
    public RestsOn restsOn() {
        return RestsOn.SURVEY;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        boolean known = isSurveyed(point) || readings.findNear(point).isPresent();
        return known ? Coverage.KNOWN : Coverage.NOT_SURVEYED;
    }

    private boolean isSurveyed(MapPoint point) {
        return spline.holdsDisc(point.east(), point.north(), DISC_RADIUS_METRES)
                && coverage.isSurveyed(index, point.east(), point.north());
    }

    private boolean surveyStands(MapPoint point) {
        return isSurveyed(point) && overruling.findNear(point).isEmpty();
    }

    @Override
    public Optional<Surface> surface() {
        return Optional.of(spline.surface());
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        return surveyStands(point)
                ? Optional.of(surveyedPlane(point))
                : readings.findNear(point).map(LevelReading::plane);
    }

    private PlaneFit surveyedPlane(MapPoint point) {
        double[] values = spline.valuesOverDisc(DISC_RADIUS_METRES, point.east(), point.north());
        double[] covariance = spline.covarianceOverDisc(DISC_RADIUS_METRES, point.east(), point.north());
        return new PlaneFit(values[0], values[1], covariance[0], covariance[1], covariance[2]);
    }

    @Override
    public Optional<ErrorParts> slopeErrorAt(MapPoint point) {
        return surveyStands(point) ? Optional.of(surveyedError(point)) : Ground.super.slopeErrorAt(point);
    }

    private ErrorParts surveyedError(MapPoint point) {
        PlaneFit whole = surveyedPlane(point);
        double[] own = spline.ownCovarianceOverDisc(DISC_RADIUS_METRES, point.east(), point.north());
        PlaneFit alone = new PlaneFit(whole.gradientEast(), whole.gradientNorth(), own[0], own[1], own[2]);
        return ErrorParts.of(whole.slopeStandardError(), alone.slopeStandardError());
    }

    @Override
    public Optional<MeasuredSharing> sharing() {
        return Optional.of(spline.sharing());
    }

    /**
     * {@inheritDoc} Empty also where the disc reaches beyond the surveyed rectangle, and about a reading that
     * overrules the survey.
     */
    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        if (!surveyStands(point) || !spline.holdsDisc(point.east(), point.north(), discRadiusMetres)) {
            return Optional.empty();
        }
        double[] values = spline.valuesOverDisc(discRadiusMetres, point.east(), point.north());
        double[] c = spline.covarianceOverDisc(discRadiusMetres, point.east(), point.north());
        if (Double.isNaN(c[0])) {
            return Optional.empty();
        }
        BendFit.Covariance covariance = new BendFit.Covariance(c[3], c[4], c[5], c[6], c[7], c[8]);
        return Optional.of(new BendFit(values[2], values[3], values[4], covariance, discRadiusMetres));
    }

    @Override
    public double heightStandardErrorMetres() {
        return spline.summary().heightStandardErrorMetres();
    }

    @Override
    public double surveySigmaMetres() {
        return spline.summary().sigmaMetres();
    }

    /** How many of the points that counted lie within {@link #DISC_RADIUS_METRES} of a spot. */
    public int pointsInDisc(MapPoint point) {
        return index.countWithin(point.east(), point.north(), DISC_RADIUS_METRES);
    }

    /** Points left out because they lie too far off the surface. */
    public List<Blunder> blunders() {
        return blunders;
    }

    /** Whether the ground steps at a spot: bends far more than elsewhere, and more than an even fit follows. */
    public boolean isAtStep(MapPoint point) {
        return spline.isAtStep(point.east(), point.north());
    }

    /** Whether a spot lies at a step or just beside it, where slopes are known less well. */
    public boolean isBesideStep(MapPoint point) {
        return spline.isBesideStep(point.east(), point.north());
    }

    /** What readings not yet taken would tell; computed anew, about a tenth of a second. */
    public ReadingEffects readingEffects() {
        return new ReadingEffects(spline.slopeTies());
    }

    /** The surface's numerics, for measurements of the fit itself. */
    public SurveySpline spline() {
        return spline;
    }

    /** What the fit came to. */
    public SplineSummary summary() {
        return spline.summary();
    }

    /** The readings that the survey contradicts: about them they count, and not the survey. */
    public List<LevelReading> overruling() {
        return overruling.readings();
    }

    /** The level readings taken in. */
    public List<LevelReading> readings() {
        return readings.readings();
    }
}
