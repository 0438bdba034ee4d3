package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/** An invented round green of 6 m with a shoulder, a gap in its survey and a strip outside of it. */
class MeasurementBytesTest {
    private static final Policy POLICY = Policy.defaults();
    private static final GreenSpeed SPEED = new GreenSpeed(10.5);
    private static final Hole HOLE = Hole.of("3", Shapes.circle(0, 0, 6));
    private static final SurveyPoints POINTS = new MadeSurvey(
                    MadeSurface.plane(0.03, 0.02), -7.5, -7.5, 7.5, 7.5, 6, 0.012, 5)
            .points(at -> at.distanceMetres(new MapPoint(3, 3)) > 2);

    private static final AtomicInteger FITS = new AtomicInteger();
    private static final SurveyedGround GROUND = fit();
    private static final GreenMeasurement FRESH = GreenMeasurement.measure(new Green(HOLE, GROUND), SPEED, POLICY);
    private static final byte[] BYTES = MeasurementBytes.write(FRESH, GROUND);

    private static SurveyedGround fit() {
        FITS.incrementAndGet();
        try {
            return SurveyedGround.fit(HOLE.green(), POINTS, POLICY);
        } catch (SurveyTooThin impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private GreenMeasurement read() {
        return MeasurementBytes.read(BYTES, HOLE, MeasurementBytesTest::fit, SPEED, POLICY)
                .orElseThrow();
    }

    @Test
    void everySpotIsWhatItWasToTheBitAndNothingIsFitted() {
        int before = FITS.get();
        GreenMeasurement kept = read();
        assertThat(kept.grid().spots()).isEqualTo(FRESH.grid().spots());
        assertThat(kept.grid().spots()).anyMatch(spot -> !spot.known()).anyMatch(SpotGround::known);
        assertThat(MeasurementBytes.write(kept, GROUND)).isEqualTo(BYTES);
        assertThat(FITS).hasValue(before);
    }

    @Test
    void theGreenIsJudgedAlikeOnDryAndRainyDaysWithoutFitting() {
        int fitsBefore = FITS.get();
        GreenMeasurement kept = read();
        for (boolean rain : new boolean[] {false, true}) {
            DayConditions day = new DayConditions(SPEED, rain, false, GroundOnDay.clear(LocalDate.of(2026, 6, 20)));
            GreenJudge before = new GreenJudge(FRESH, day, POLICY);
            GreenJudge after = new GreenJudge(kept, day, POLICY);
            assertThat(after.judgeGreen().candidates())
                    .hasSizeGreaterThan(100)
                    .isEqualTo(before.judgeGreen().candidates());
            assertThat(after.judgeGreen().best()).isEqualTo(before.judgeGreen().best());
        }
        assertThat(FITS).hasValue(fitsBefore);
    }

    @Test
    void positionsBetweenTheSpotsAreJudgedAlikeWithOneFit() {
        int fitsBefore = FITS.get();
        DayConditions day = new DayConditions(SPEED, true, false, GroundOnDay.clear(LocalDate.of(2026, 6, 20)));
        GreenJudge before = new GreenJudge(FRESH, day, POLICY);
        GreenJudge after = new GreenJudge(read(), day, POLICY);
        Random random = new Random(8);
        for (int i = 0; i < 20; i++) {
            MapPoint position = new MapPoint(10 * random.nextDouble() - 5, 10 * random.nextDouble() - 5);
            assertThat(after.judge(position)).isEqualTo(before.judge(position));
        }
        assertThat(FITS).hasValue(fitsBefore + 1);
    }

    @Test
    void damagedBytesAreNotBelieved() {
        Random random = new Random(9);
        for (int i = 0; i < 200; i++) {
            byte[] flipped = BYTES.clone();
            flipped[random.nextInt(BYTES.length)] ^= (byte) (1 << random.nextInt(8));
            assertThat(MeasurementBytes.read(flipped, HOLE, MeasurementBytesTest::fit, SPEED, POLICY))
                    .isEmpty();
            byte[] cut = Arrays.copyOf(BYTES, random.nextInt(BYTES.length));
            assertThat(MeasurementBytes.read(cut, HOLE, MeasurementBytesTest::fit, SPEED, POLICY))
                    .isEmpty();
        }
    }
}
