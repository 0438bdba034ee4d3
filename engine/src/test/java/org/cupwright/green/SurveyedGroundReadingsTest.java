package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Level readings on invented surveyed ground. */
class SurveyedGroundReadingsTest {
    private static final Outline GREEN = Shapes.circle(0, 0, 6);
    private static final MapPoint SPOT = new MapPoint(1.1, -0.7);
    private static final MapPoint IN_THE_GAP = new MapPoint(-3.5, 0);
    private static final MadeSurface SURFACE = MadeSurface.gentle(21, 6);

    private static SurveyedGround survey;

    @BeforeAll
    static void fit() throws SurveyTooThin {
        MadeSurvey made = new MadeSurvey(SURFACE, -8.5, -8.5, 8.5, 8.5, 8, 0.025, 5);
        survey = SurveyedGround.fit(
                GREEN, made.points(point -> point.distanceMetres(IN_THE_GAP) > 1), Policy.defaults());
    }

    private static double varianceAt(Ground ground, MapPoint point) {
        PlaneFit plane = ground.planeAt(point).orElseThrow();
        return plane.varianceEast() + plane.varianceNorth();
    }

    private static SurveyedGround withReadingAt(MapPoint place, double east, double north) {
        return survey.withReadings(List.of(new LevelReading(place, east, north, 0.001)));
    }

    /**
     * About nine tenths of the slope's variance go at the spot and half at 0.75 m (our own measurement of the method).
     */
    @Test
    void aReadingTakesAwayMostOfTheVarianceAtItsSpotAndLessFurtherOff() {
        PlaneFit before = survey.planeAt(SPOT).orElseThrow();
        SurveyedGround after = withReadingAt(SPOT, before.gradientEast(), before.gradientNorth());
        MapPoint beside = new MapPoint(SPOT.east() + 0.75, SPOT.north());
        MapPoint far = new MapPoint(SPOT.east(), SPOT.north() + 4.5);

        assertThat(varianceAt(after, SPOT)).isLessThan(0.25 * varianceAt(survey, SPOT));
        assertThat(varianceAt(after, beside))
                .isBetween(0.2 * varianceAt(survey, beside), 0.8 * varianceAt(survey, beside));
        assertThat(varianceAt(after, far)).isCloseTo(varianceAt(survey, far), within(0.05 * varianceAt(survey, far)));
        assertThat(after.planeAt(SPOT).orElseThrow().gradientEast()).isCloseTo(before.gradientEast(), within(1e-6));
    }

    @Test
    void aReadingThatDisagreesMovesTheSurfaceMostOfTheWay() {
        PlaneFit before = survey.planeAt(SPOT).orElseThrow();
        SurveyedGround after = withReadingAt(SPOT, before.gradientEast() + 0.01, before.gradientNorth());
        double moved = after.planeAt(SPOT).orElseThrow().gradientEast() - before.gradientEast();

        assertThat(moved).isBetween(0.008, 0.01);
        assertThat(after.readings()).hasSize(1);
        assertThat(survey.readings()).isEmpty();
    }

    @Test
    void readingsOneByOneGiveWhatTheyGiveTogether() {
        LevelReading one = new LevelReading(SPOT, 0.02, 0.01, 0.001);
        LevelReading two = new LevelReading(new MapPoint(0.3, 0.4), 0.01, 0.02, 0.001);
        MapPoint between = new MapPoint(0.7, -0.2);
        PlaneFit together =
                survey.withReadings(List.of(one, two)).planeAt(between).orElseThrow();
        PlaneFit inTurn = survey.withReadings(List.of(one))
                .withReadings(List.of(two))
                .planeAt(between)
                .orElseThrow();

        assertThat(inTurn.gradientEast()).isCloseTo(together.gradientEast(), within(1e-9));
        assertThat(inTurn.varianceNorth()).isCloseTo(together.varianceNorth(), within(1e-12));
    }

    @Test
    void inAGapAReadingStandsAloneForItsReach() {
        SurveyedGround after = withReadingAt(IN_THE_GAP, 0.02, 0.01);

        assertThat(survey.coverageAt(IN_THE_GAP)).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(after.coverageAt(IN_THE_GAP)).isEqualTo(Coverage.KNOWN);
        assertThat(after.planeAt(IN_THE_GAP)).contains(new PlaneFit(0.02, 0.01, 1e-6, 0, 1e-6));
        assertThat(after.bendAt(IN_THE_GAP, 0.91)).isEmpty();
    }

    /** A plane surveyed well has errors that leave a reading no say; yet the person saw the ground. */
    @Test
    void aReadingThatTheSurveyContradictsStandsForItsReach() throws SurveyTooThin {
        MadeSurface plane = new MadeSurface(0, 0, 0.012, List.of(), List.of());
        SurveyedGround even = SurveyedGround.fit(
                GREEN, new MadeSurvey(plane, -8.5, -8.5, 8.5, 8.5, 5, 0.005, 3).points(), Policy.defaults());
        SurveyedGround after = even.withReadings(List.of(new LevelReading(SPOT, 0, 0.035, 0.001)));
        MapPoint within = new MapPoint(SPOT.east() + 0.55, SPOT.north());
        MapPoint beyond = new MapPoint(SPOT.east() + 0.65, SPOT.north());

        assertThat(after.overruling()).hasSize(1);
        assertThat(after.planeAt(within)).contains(new PlaneFit(0, 0.035, 1e-6, 0, 1e-6));
        assertThat(after.bendAt(within, 0.91)).isEmpty();
        assertThat(after.planeAt(beyond).orElseThrow().slopePercent()).isLessThan(2);
    }

    @Test
    void aReadingThatTheSurveyCanFollowDoesNotOverruleIt() {
        PlaneFit before = survey.planeAt(SPOT).orElseThrow();
        SurveyedGround after = withReadingAt(SPOT, before.gradientEast() + 0.01, before.gradientNorth());

        assertThat(after.overruling()).isEmpty();
        assertThat(after.bendAt(SPOT, 0.91)).isPresent();
    }
}
