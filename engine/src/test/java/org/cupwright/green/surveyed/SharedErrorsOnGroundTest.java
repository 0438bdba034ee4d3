package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.ErrorParts;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.agreement.RoundBought;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** What a survey's kind does to its ground: a plane of 2 % to the west, 12 by 12 m, seen with 6 mm. Invented. */
class SharedErrorsOnGroundTest {
    private static final Outline GREEN = Shapes.rectangle(-6, -6, 6, 6);
    private static final MapPoint SPOT = new MapPoint(1, 2);

    private static SurveyPoints points(double tilt) {
        java.util.Random random = new java.util.Random(11);
        int count = 2500;
        double[][] xyz = new double[3][count];
        for (int i = 0; i < count; i++) {
            xyz[0][i] = 16 * random.nextDouble() - 8;
            xyz[1][i] = 16 * random.nextDouble() - 8;
            xyz[2][i] = 0.02 * xyz[0][i] + tilt * xyz[1][i] + 0.006 * random.nextGaussian();
        }
        return SurveyPoints.scattered(xyz[0], xyz[1], xyz[2]);
    }

    private static SurveyedGround ground(SurveyKind kind, double tilt) {
        try {
            return SurveyedGround.fit(GREEN, points(tilt).as(kind), Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(tooThin);
        }
    }

    private static List<LevelReading> read(int count) {
        List<LevelReading> readings = new ArrayList<>();
        double[][] spots = {{-4, -4}, {-4, 4}, {4, -4}, {4, 4}, {0, 0}, {3, 0}};
        for (int i = 0; i < count; i++) {
            readings.add(new LevelReading(new MapPoint(spots[i][0], spots[i][1]), 0.02, 0, 0.001));
        }
        return readings;
    }

    private static double error(SurveyedGround ground) {
        return ground.planeAt(SPOT).orElseThrow().slopeStandardError();
    }

    @Test
    void theKindMovesTheErrorAndNotTheGround() {
        PlaneFit levelled = ground(SurveyKind.LEVELLED, 0).planeAt(SPOT).orElseThrow();
        for (SurveyKind kind : SurveyKind.values()) {
            SurveyedGround ground = ground(kind, 0);
            PlaneFit plane = ground.planeAt(SPOT).orElseThrow();
            ErrorParts parts = ground.slopeErrorAt(SPOT).orElseThrow();
            assertThat(plane.gradientEast()).as(kind.name()).isEqualTo(levelled.gradientEast());
            assertThat(parts.own()).as(kind.name()).isCloseTo(levelled.slopeStandardError(), within(1e-12));
            assertThat(Math.hypot(parts.own(), parts.shared())).isCloseTo(plane.slopeStandardError(), within(1e-12));
            assertThat(parts.shared() > 0).as(kind.name()).isEqualTo(kind != SurveyKind.LEVELLED);
        }
    }

    @Test
    void aReadingTellsMoreOfGroundFarOffWhereErrorsAreShared() {
        MapPoint other = new MapPoint(-1, 2);
        double shared = ground(SurveyKind.DRONE, 0).readingEffects().at(SPOT).with(other)[0];
        double alone = ground(SurveyKind.LEVELLED, 0).readingEffects().at(SPOT).with(other)[0];
        assertThat(shared).isGreaterThan(2 * Math.abs(alone));
    }

    @Test
    void fromFiveReadingsOnTheAmplitudeIsMeasured() {
        SurveyedGround ground = ground(SurveyKind.DRONE, 0);
        MeasuredSharing four = ground.withReadings(read(4)).sharing().orElseThrow();
        MeasuredSharing five = ground.withReadings(read(5)).sharing().orElseThrow();
        assertThat(four.isMeasured()).isFalse();
        assertThat(four.sigmaMetres()).isEqualTo(0.008);
        assertThat(five.isMeasured()).isTrue();
        assertThat(five.sigmaMetres()).isLessThan(0.006);
        assertThat(five.sigmaErrorMetres()).isBetween(0.0003, 0.004);
        assertThat(five.trended()).isFalse();
        assertThat(error(ground.withReadings(read(5)))).isLessThan(0.7 * error(ground));
    }

    @Test
    void aTiltOfTheWholeSurveyIsCorrectedFarFromTheReadingsToo() {
        for (SurveyKind kind : List.of(SurveyKind.LEVELLED, SurveyKind.SCAN, SurveyKind.LIDAR)) {
            SurveyedGround after = ground(kind, 0.01).withReadings(read(6));
            PlaneFit plane = after.planeAt(SPOT).orElseThrow();
            assertThat(after.sharing().orElseThrow().trended()).as(kind.name()).isTrue();
            assertThat(plane.gradientNorth()).as(kind.name()).isCloseTo(0, within(0.0015));
            assertThat(plane.gradientNorth()).as(kind.name()).isCloseTo(0, within(3 * error(after)));
            assertThat(after.overruling()).as(kind.name()).isEmpty();
        }
    }

    @Test
    void whatARoundBoughtIsTold() {
        SurveyedGround ground = ground(SurveyKind.DRONE, 0);
        RoundBought bought = RoundBought.of(GREEN, ground, read(6)).orElseThrow();
        assertThat(bought.readings()).isEqualTo(6);
        assertThat(bought.withoutPoints()).isBetween(0.1, 0.6); // on a plane the fit smooths patches away
        assertThat(bought.withPoints()).isLessThan(0.9 * bought.withoutPoints());
        assertThat(RoundBought.of(GREEN, ground, List.of())).isEmpty();
    }
}
