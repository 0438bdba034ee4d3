package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Invented ground, invented surveys. */
class SurveyedGroundTest {
    private static final Outline GREEN = Shapes.circle(0, 0, 6);
    private static final MapPoint CENTRE = new MapPoint(0, 0);
    private static final Policy DEFAULTS = Policy.defaults();

    private static MadeSurvey survey(Surface surface, double perSquareMetre, double sigma) {
        return new MadeSurvey(surface, -8.5, -8.5, 8.5, 8.5, perSquareMetre, sigma, 11);
    }

    private static SurveyedGround fit(SurveyPoints points) {
        try {
            return SurveyedGround.fit(GREEN, points, DEFAULTS);
        } catch (SurveyTooThin tooThin) {
            throw new AssertionError(tooThin);
        }
    }

    /** A plane costs no penalty, so it comes back whatever the penalty, but for the rounding of the solve. */
    @Test
    void anExactPlaneComesBackExactly() {
        SurveyedGround ground =
                fit(survey(MadeSurface.plane(0.02, -0.013), 8, 0).points());
        PlaneFit plane = ground.planeAt(new MapPoint(2, -3)).orElseThrow();

        assertThat(plane.gradientEast()).isCloseTo(0.02, within(1e-7));
        assertThat(plane.gradientNorth()).isCloseTo(-0.013, within(1e-7));
        assertThat(ground.bendAt(CENTRE, 0.91).orElseThrow().greatest().points())
                .isCloseTo(0, within(1e-5));
    }

    @Test
    void aNoisyPlaneComesBackWithinItsStandardErrorsAndItsNoiseIsFound() {
        SurveyedGround ground =
                fit(survey(MadeSurface.plane(0.02, -0.013), 8, 0.01).points());
        PlaneFit plane = ground.planeAt(CENTRE).orElseThrow();

        assertThat(plane.gradientEast()).isCloseTo(0.02, within(3 * plane.componentStandardError(1, 0)));
        assertThat(plane.gradientNorth()).isCloseTo(-0.013, within(3 * plane.componentStandardError(0, 1)));
        assertThat(plane.slopeStandardError()).isBetween(0.00003, 0.001);
        assertThat(ground.surveySigmaMetres()).isCloseTo(0.01, within(0.0007));
        assertThat(ground.heightStandardErrorMetres()).isBetween(0.00003, 0.001);
        assertThat(ground.restsOn()).isEqualTo(RestsOn.SURVEY);
    }

    /** Large coordinates and a high site must not cost accuracy. */
    @Test
    void movingTheSurveyFarAwayAndHighUpChangesNothing() {
        SurveyPoints near = survey(MadeSurface.gentle(3, 6), 8, 0.01).points();
        double[][] moved = new double[3][near.count()];
        for (int i = 0; i < near.count(); i++) {
            moved[0][i] = near.east(i) + 487_000;
            moved[1][i] = near.north(i) + 5_312_000;
            moved[2][i] = near.heightMetres(i) + 1_750;
        }
        Outline farGreen = Shapes.circle(487_000, 5_312_000, 6);
        PlaneFit here = fit(near).planeAt(new MapPoint(1.3, -2.2)).orElseThrow();
        PlaneFit there = fitOn(farGreen, SurveyPoints.scattered(moved[0], moved[1], moved[2]))
                .planeAt(new MapPoint(487_001.3, 5_311_997.8))
                .orElseThrow();

        assertThat(there.gradientEast()).isCloseTo(here.gradientEast(), within(1e-6));
        assertThat(there.gradientNorth()).isCloseTo(here.gradientNorth(), within(1e-6));
        assertThat(there.varianceEast()).isCloseTo(here.varianceEast(), within(0.02 * here.varianceEast()));
    }

    private static SurveyedGround fitOn(Outline green, SurveyPoints points) {
        try {
            return SurveyedGround.fit(green, points, DEFAULTS);
        } catch (SurveyTooThin tooThin) {
            throw new AssertionError(tooThin);
        }
    }

    @Test
    void blundersAreLeftOutAndReportedWhereTheyAre() {
        SurveyPoints sound = survey(MadeSurface.gentle(5, 6), 8, 0.008).points();
        List<SurveyPoint> points = new ArrayList<>(list(sound));
        List<SurveyPoint> wrong = List.of(
                new SurveyPoint(1.2, 0.4, 2.1),
                new SurveyPoint(-3, 2, -0.4),
                new SurveyPoint(1.3, 0.5, 1.9),
                new SurveyPoint(4, -1, 0.4));
        points.addAll(wrong);
        SurveyedGround ground = fit(SurveyPoints.scattered(points));

        assertThat(ground.blunders())
                .extracting(Blunder::place)
                .contains(wrong.stream()
                        .map(point -> new MapPoint(point.east(), point.north()))
                        .toArray(MapPoint[]::new));
        assertThat(ground.blunders()).hasSizeLessThan(wrong.size() + 4);
        PlaneFit clean = fit(sound).planeAt(new MapPoint(1.2, 0.4)).orElseThrow();
        PlaneFit cleaned = ground.planeAt(new MapPoint(1.2, 0.4)).orElseThrow();
        assertThat(cleaned.gradientEast()).isCloseTo(clean.gradientEast(), within(0.001));
        assertThat(cleaned.gradientNorth()).isCloseTo(clean.gradientNorth(), within(0.001));
    }

    private static List<SurveyPoint> list(SurveyPoints points) {
        return IntStream.range(0, points.count())
                .mapToObj(i -> new SurveyPoint(points.east(i), points.north(i), points.heightMetres(i)))
                .toList();
    }

    @Test
    void aSteepTierIsGroundAndNotBlunders() {
        MadeSurface tier = MadeSurface.gentle(5, 6).withTier(new MadeSurface.Tier(0, 0, 0.6, 0.8, 0.3, 2));
        SurveyedGround ground = fit(survey(tier, 8, 0.005).points());

        assertThat(ground.blunders()).hasSizeLessThan(4);
        assertThat(ground.planeAt(CENTRE).orElseThrow().slope()).isGreaterThan(0.18);
    }

    @Test
    void aHoleInTheSurveyIsNotSurveyedAndItsEdgesAre() {
        SurveyedGround ground =
                fit(survey(MadeSurface.plane(0.02, 0), 10, 0.01).points(point -> point.distanceMetres(CENTRE) > 2));

        assertThat(ground.coverageAt(CENTRE)).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(ground.planeAt(CENTRE)).isEmpty();
        assertThat(ground.bendAt(CENTRE, 0.91)).isEmpty();
        assertThat(ground.coverageAt(new MapPoint(3.5, 0))).isEqualTo(Coverage.KNOWN);
    }

    @Test
    void halfAGreenIsKnownOnItsHalf() {
        SurveyedGround ground = fit(survey(MadeSurface.plane(0.02, 0), 10, 0.01).points(point -> point.east() < 0));

        assertThat(ground.coverageAt(new MapPoint(-3, 0))).isEqualTo(Coverage.KNOWN);
        assertThat(ground.coverageAt(new MapPoint(2, 0))).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(ground.planeAt(new MapPoint(2, 0))).isEmpty();
        assertThat(ground.coverageAt(new MapPoint(200, 0))).isEqualTo(Coverage.NOT_SURVEYED);
    }

    @Test
    void aDenseLineAcrossTheGreenShowsNoSlope() {
        SurveyPoints line = survey(MadeSurface.plane(0.02, 0.03), 200, 0.005)
                .points(point -> Math.abs(point.north()) < 0.05 || point.distanceMetres(new MapPoint(-4, 4)) < 1);
        SurveyedGround ground = fit(line);

        assertThat(ground.coverageAt(CENTRE)).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(ground.planeAt(CENTRE)).isEmpty();
    }

    @Test
    void unevenDensityWidensTheErrorWhereThereIsLess() {
        SurveyPoints points = survey(MadeSurface.gentle(4, 6), 30, 0.02)
                .points(point -> point.east() < 0 || (point.hashCode() & 3) == 0);
        SurveyedGround ground = fit(points);
        double dense = ground.planeAt(new MapPoint(-3, 0)).orElseThrow().slopeStandardError();
        double sparse = ground.planeAt(new MapPoint(3, 0)).orElseThrow().slopeStandardError();

        assertThat(sparse).isGreaterThan(1.3 * dense);
    }

    @Test
    void tooLittleToFitIsSaidWithCounts() {
        assertTooThin(new double[0], new double[0], SurveyTooThin.Reason.TOO_FEW_POINTS);
        assertTooThin(new double[] {1}, new double[] {1}, SurveyTooThin.Reason.TOO_FEW_POINTS);
        double[] along = IntStream.range(0, 50).mapToDouble(i -> -5 + 0.2 * i).toArray();
        assertTooThin(along, along, SurveyTooThin.Reason.ON_A_LINE);
        assertTooThin(new double[50], new double[50], SurveyTooThin.Reason.ON_A_LINE);
    }

    private static void assertTooThin(double[] east, double[] north, SurveyTooThin.Reason reason) {
        SurveyPoints points = SurveyPoints.scattered(east, north, new double[east.length]);
        assertThatThrownBy(() -> SurveyedGround.fit(GREEN, points, DEFAULTS))
                .isInstanceOfSatisfying(SurveyTooThin.class, tooThin -> {
                    assertThat(tooThin.reason()).isEqualTo(reason);
                    assertThat(tooThin.points()).isEqualTo(east.length);
                });
    }

    @Test
    void pointsTwiceWithDifferentHeightsAreAveragedAndNoCrash() {
        List<SurveyPoint> points = new ArrayList<>();
        for (SurveyPoint point :
                list(survey(MadeSurface.plane(0.02, 0), 8, 0.005).points())) {
            points.add(point);
            points.add(new SurveyPoint(point.east(), point.north(), point.heightMetres() + 0.02));
        }
        SurveyedGround ground = fit(SurveyPoints.scattered(points));

        assertThat(ground.planeAt(CENTRE).orElseThrow().gradientEast()).isCloseTo(0.02, within(0.003));
        assertThat(ground.surveySigmaMetres()).isBetween(0.009, 0.013);
    }

    @Test
    void sixCloseHeapsOfPointsDoNotCrash() {
        SurveyPoints heaps = survey(MadeSurface.plane(0.02, 0), 300, 0.01)
                .points(point -> Math.abs(Math.IEEEremainder(point.east(), 5)) < 0.1
                        && Math.abs(Math.IEEEremainder(point.north(), 5)) < 0.1);

        assertThat(fit(heaps).coverageAt(new MapPoint(2.5, 2.5))).isEqualTo(Coverage.NOT_SURVEYED);
    }

    @Test
    void aGridIsKnownBetweenItsNodesAndItsGivenNoiseIsKept() {
        SurveyPoints grid = survey(MadeSurface.plane(0.02, 0), 1, 0.01).grid(1.0);
        SurveyPoints declared = SurveyPoints.grid(
                1.0,
                0.1,
                list(grid).stream().mapToDouble(SurveyPoint::east).toArray(),
                list(grid).stream().mapToDouble(SurveyPoint::north).toArray(),
                list(grid).stream().mapToDouble(SurveyPoint::heightMetres).toArray());

        assertThat(fit(grid).coverageAt(new MapPoint(0, 0))).isEqualTo(Coverage.KNOWN);
        assertThat(fit(grid).coverageAt(new MapPoint(0.25, 0.5))).isEqualTo(Coverage.KNOWN);
        assertThat(fit(declared).surveySigmaMetres()).isEqualTo(0.1);
        assertThat(fit(declared).planeAt(CENTRE).orElseThrow().slopeStandardError())
                .isGreaterThan(3 * fit(grid).planeAt(CENTRE).orElseThrow().slopeStandardError());
    }

    @Test
    void aGridsMissingNodeIsAGapAndTooWideCellsAreRefused() {
        SurveyPoints grid = survey(MadeSurface.plane(0.02, 0), 1, 0.01).grid(1.0);
        SurveyPoints holed = grid.where(i -> Math.hypot(grid.east(i) - 0.5, grid.north(i) - 0.5) > 0.1);

        assertThat(fit(holed).coverageAt(new MapPoint(0.5, 0.5))).isEqualTo(Coverage.NOT_SURVEYED);
        assertThatThrownBy(() -> SurveyedGround.fit(
                        GREEN, survey(MadeSurface.plane(0.02, 0), 1, 0.01).grid(1.5), DEFAULTS))
                .isInstanceOfSatisfying(
                        SurveyTooThin.class,
                        tooThin -> assertThat(tooThin.reason()).isEqualTo(SurveyTooThin.Reason.CELLS_TOO_WIDE));
    }

    @Test
    void aWiderDiscShowsTheBendWithASmallerError() {
        SurveyedGround ground = fit(survey(MadeSurface.gentle(8, 6), 8, 0.01).points());
        BendFit narrow = ground.bendAt(CENTRE, 0.91).orElseThrow();
        BendFit wide = ground.bendAt(CENTRE, 2.44).orElseThrow();

        assertThat(wide.covariance().east2East2())
                .isLessThan(0.5 * narrow.covariance().east2East2());
        assertThat(wide.covariance().east2East2()).isPositive();
        assertThat(wide.discRadiusMetres()).isEqualTo(2.44);
    }
}
