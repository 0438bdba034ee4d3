package org.cupwright.green.resurvey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Two invented surveys, good to a millimetre, of a small invented green that was lifted or tilted between them. */
class ResurveyTest {
    private static final Outline GREEN = Shapes.rectangle(0, 0, 6, 5);

    private static Surface plane(double height, double east, double north) {
        return new MadeSurface(height, east, north, List.of(), List.of());
    }

    private static SurveyedGround fit(Surface surface, Predicate<MapPoint> where) {
        try {
            return SurveyedGround.fit(
                    GREEN, new MadeSurvey(surface, -1, -1, 7, 6, 9, 0.001, 4).points(where), Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(tooThin);
        }
    }

    private static Resurvey between(Surface before, Surface after) {
        return Resurvey.between(GREEN, fit(before, all -> true), fit(after, all -> true));
    }

    /** Thirty square metres, three centimetres up: 0.9 m³ put on, nothing taken off, no slope changed. */
    @Test
    void aGreenThatWasLifted() {
        Resurvey report = between(plane(10, 0.01, 0.02), plane(10.03, 0.01, 0.02));
        assertThat(report.comparedSquareMetres()).isCloseTo(30, within(1e-9));
        assertThat(report.notComparedSquareMetres()).isZero();
        assertThat(report.changedSquareMetres()).isCloseTo(30, within(1e-9));
        assertThat(report.fill().cubicMetres()).isCloseTo(0.9, within(0.01));
        assertThat(report.net().cubicMetres()).isCloseTo(0.9, within(0.01));
        // 270 points of a millimetre each: 0.06 mm for the middle height of a survey, 1.8 l for all of it, 2.6 l for
        // two
        assertThat(report.net().standardErrorCubicMetres()).isBetween(0.0018, 0.0035);
        assertThat(report.cut().cubicMetres()).isZero();
        assertThat(report.steeperSquareMetres() + report.gentlerSquareMetres()).isZero();
        assertThat(report.heights().greatestRise().orElseThrow().metres()).isCloseTo(0.03, within(0.002));
        assertThat(report.heights().greatestFall()).isEmpty();
        assertThat(report.heights().middle().orElseThrow().standardErrorMetres())
                .isBetween(1e-4, 0.002);
    }

    @Test
    void aGreenThatWasLowered() {
        Resurvey report = between(plane(10, 0.01, 0.02), plane(9.98, 0.01, 0.02));
        assertThat(report.cut().cubicMetres()).isCloseTo(0.6, within(0.01));
        assertThat(report.fill().cubicMetres()).isZero();
        assertThat(report.net().cubicMetres()).isCloseTo(-0.6, within(0.01));
        assertThat(report.heights().greatestRise()).isEmpty();
        assertThat(report.heights().greatestFall().orElseThrow().metres()).isCloseTo(-0.02, within(0.002));
    }

    /** Turned about the line three metres east: half of it up, half of it down, a triangle of 3 m × 3 cm each. */
    @Test
    void aGreenThatWasTilted() {
        Resurvey report = between(plane(10, 0.01, 0), plane(10 - 0.03, 0.02, 0));
        double half = 0.5 * 3 * 0.03 * 5;
        assertThat(report.fill().cubicMetres()).isCloseTo(half, within(0.01));
        assertThat(report.cut().cubicMetres()).isCloseTo(half, within(0.01));
        assertThat(report.net().cubicMetres()).isCloseTo(0, within(0.01));
        assertThat(report.steeperSquareMetres()).isGreaterThan(28);
        assertThat(report.gentlerSquareMetres()).isZero();
        assertThat(report.medianChange().orElseThrow().points()).isCloseTo(1, within(0.1));
        assertThat(report.medianChange().orElseThrow().standardErrorPoints()).isBetween(0.005, 0.2);
        double wide = report.wideChange().orElseThrow().points();
        assertThat(wide)
                .isBetween(
                        report.medianChange().orElseThrow().points(),
                        report.greatestChange().orElseThrow().points());
        Resurvey back = between(plane(10 - 0.03, 0.02, 0), plane(10, 0.01, 0));
        assertThat(back.gentlerSquareMetres()).isGreaterThan(28);
        assertThat(back.steeperSquareMetres()).isZero();
        assertThat(back.medianChange().orElseThrow().points()).isCloseTo(-1, within(0.1));
    }

    /** Ground that bends up by 4 mm for each metre squared: its slope grows by 0.4 points a metre, from none to 2.4. */
    @Test
    void sizesOfChangesStandInTheirOrder() {
        Surface bent = (x, y, out) -> {
            out.z = 10 + 0.002 * x * x;
            out.zx = 0.004 * x;
            out.zy = 0;
            out.zxx = 0.004;
            out.zxy = 0;
            out.zyy = 0;
        };
        Resurvey report = between(plane(10, 0, 0), bent);
        assertThat(report.medianChange().orElseThrow().points()).isCloseTo(1.2, within(0.15));
        assertThat(report.wideChange().orElseThrow().points()).isCloseTo(2.28, within(0.15));
        SlopeChange greatest = report.greatestChange().orElseThrow();
        assertThat(greatest.points()).isBetween(2.1, 2.5);
        assertThat(greatest.at().east()).isCloseTo(5.75, within(1e-9));
        assertThat(2 * greatest.at().north() % 1).as("in the middle of a cell").isCloseTo(0.5, within(1e-9));
        assertThat(report.heights().greatestRise().orElseThrow().metres())
                .isCloseTo(0.002 * 5.75 * 5.75, within(0.003));
    }

    /** A gradient that turns to another side without growing has changed as well. */
    @Test
    void aGreenThatFallsAnotherWay() {
        Resurvey report = between(plane(10, 0.02, 0), plane(10, 0, 0.02));
        assertThat(report.steeperSquareMetres() + report.gentlerSquareMetres()).isGreaterThan(28);
        assertThat(report.medianChange().orElseThrow().points()).isCloseTo(0, within(0.1));
    }

    /** Points in a strip along a diagonal show the slope along it ten times as well as the slope across it. */
    @Test
    void aChangeCountsByWhatIsKnownOfItsDirection() {
        Predicate<MapPoint> strip = at -> Math.abs(at.east() - at.north()) < 0.6;
        SurveyedGround before = fit(plane(10, 0.01, 0.02), strip);
        PlaneFit middle = before.planeAt(new MapPoint(2.75, 2.75)).orElseThrow();
        double half = Math.sqrt(0.5);
        double along = middle.componentStandardError(half, half);
        double across = middle.componentStandardError(half, -half);
        assertThat(across).isBetween(5 * along, 20 * along);
        // Of two surveys 2 standard errors in each component are 2 of the size: a chi-square of 4 is below 5.99.
        SurveyedGround turned = fit(plane(10, 0.01 + 2 * across, 0.02 - 2 * across), strip);
        Resurvey unsure = Resurvey.between(GREEN, before, turned);
        assertThat(unsure.comparedSquareMetres()).isGreaterThan(5);
        assertThat(unsure.steeperSquareMetres() + unsure.gentlerSquareMetres()).isZero();
        SurveyedGround raised = fit(plane(10, 0.01 + 8 * along, 0.02 + 8 * along), strip);
        Resurvey sure = Resurvey.between(GREEN, before, raised);
        assertThat(sure.steeperSquareMetres()).isEqualTo(sure.comparedSquareMetres());
        assertThat(sure.gentlerSquareMetres()).isZero();
    }

    /** Each survey has half of the green: hardly any of it can be compared. */
    @Test
    void whereOneOfThemKnowsNothingNothingIsCompared() {
        Surface same = plane(10, 0.01, 0.02);
        Resurvey report = Resurvey.between(GREEN, fit(same, at -> at.east() < 1.8), fit(same, at -> at.east() > 4.2));
        assertThat(report.comparedSquareMetres()).isZero();
        assertThat(report.notComparedSquareMetres()).isCloseTo(30, within(1e-9));
        assertThat(report.medianChange()).isEmpty();
        assertThat(report.heights().middle()).isEmpty();
        assertThat(report.net().cubicMetres()).isZero();
    }

    @Test
    void heightChangesAreTheLowestTheMiddleAndTheHighest() {
        List<HeightChange> sorted = List.of(change(-0.02), change(-0.01), change(0.01), change(0.03));
        HeightChanges heights = HeightChanges.of(sorted);
        assertThat(heights.middle()).contains(sorted.get(2));
        assertThat(heights.greatestRise()).contains(sorted.get(3));
        assertThat(heights.greatestFall()).contains(sorted.get(0));
        HeightChanges still = HeightChanges.of(List.of(change(0)));
        assertThat(still.greatestRise()).isEmpty();
        assertThat(still.greatestFall()).isEmpty();
    }

    private static HeightChange change(double metres) {
        return new HeightChange(new MapPoint(0, 0), metres, 0.001);
    }
}
