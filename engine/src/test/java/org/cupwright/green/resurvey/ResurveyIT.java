package org.cupwright.green.resurvey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Two invented surveys of invented ground, between which a known amount of soil was moved. */
class ResurveyIT {
    private static final Outline GREEN = Shapes.circle(0, 0, 8);
    private static final MadeSurface.Bump MOUND = new MadeSurface.Bump(-2.5, 1, 0.06, 1.2);
    private static final MadeSurface.Bump HOLLOW = new MadeSurface.Bump(3, -1.5, -0.05, 1.0);

    private static SurveyedGround fit(Surface surface, double sigma, long seed) {
        try {
            return SurveyedGround.fit(
                    GREEN, new MadeSurvey(surface, -10, -10, 10, 10, 9, sigma, seed).points(), Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException("seed " + seed, tooThin);
        }
    }

    private static MadeSurface after(MadeSurface before) {
        List<MadeSurface.Bump> bumps = new ArrayList<>(before.bumps());
        bumps.addAll(List.of(MOUND, HOLLOW));
        return new MadeSurface(0, before.planeEast(), before.planeNorth(), bumps, List.of());
    }

    private static Resurvey compare(long seed, boolean worked) {
        MadeSurface ground = MadeSurface.gentle(seed, 8);
        return Resurvey.between(
                GREEN, fit(ground, 0.006, 2 * seed), fit(worked ? after(ground) : ground, 0.006, 2 * seed + 1));
    }

    /** A bell of height h and width w holds 2πhw² all told: both lie well inside the green. */
    private static double cubicMetres(MadeSurface.Bump bump) {
        return 2 * Math.PI * bump.height() * bump.width() * bump.width();
    }

    @Test
    void soilPutOnAndTakenOffIsFoundToItsStandardErrors() {
        int count = Suite.count("resurveys", 100, 3);
        long[] seeds = new SplittableRandom(800 + Suite.seed())
                .longs(count, 1, 1_000_000)
                .toArray();
        List<Resurvey> all = IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> compare(seeds[i], true))
                .toList();
        double truth = cubicMetres(MOUND) + cubicMetres(HOLLOW);
        long held = all.stream()
                .filter(report -> Math.abs(report.net().cubicMetres() - truth)
                        <= 2 * report.net().standardErrorCubicMetres())
                .count();
        assertThat(held)
                .as("net volumes within two errors, seed %d", Suite.seed())
                .isGreaterThanOrEqualTo((long) (0.85 * count));
        assertThat(all).allSatisfy(report -> {
            // the thin rim of a bell stays below two errors of height
            assertThat(report.fill().cubicMetres()).isBetween(0.75 * cubicMetres(MOUND), 1.1 * cubicMetres(MOUND));
            assertThat(report.cut().cubicMetres()).isBetween(-0.7 * cubicMetres(HOLLOW), -1.15 * cubicMetres(HOLLOW));
            assertThat(report.notComparedSquareMetres()).isLessThan(3);
        });
    }

    @Test
    void theGreatestChangeOfSlopeStandsOnTheFlankOfWhatWasMoved() {
        Resurvey report = compare(5, true);
        SlopeChange greatest = report.greatestChange().orElseThrow();
        MapPoint mound = new MapPoint(MOUND.east(), MOUND.north());
        MapPoint hollow = new MapPoint(HOLLOW.east(), HOLLOW.north());
        double off = Math.min(greatest.at().distanceMetres(mound), greatest.at().distanceMetres(hollow));

        assertThat(off).isBetween(0.4, 2.4);
        assertThat(Math.abs(greatest.points())).isGreaterThan(4 * greatest.standardErrorPoints());
        HeightChange rise = report.heights().greatestRise().orElseThrow();
        HeightChange fall = report.heights().greatestFall().orElseThrow();
        assertThat(rise.at().distanceMetres(mound)).isLessThan(1);
        assertThat(rise.metres()).isCloseTo(MOUND.height(), within(0.015));
        assertThat(fall.at().distanceMetres(hollow)).isLessThan(1);
        assertThat(fall.metres()).isCloseTo(HOLLOW.height(), within(0.015));
        assertThat(Math.abs(report.heights().middle().orElseThrow().metres())).isLessThan(0.01);
        assertThat(report.steeperSquareMetres() + report.gentlerSquareMetres()).isBetween(8.0, 100.0);
        assertThat(Math.abs(report.medianChange().orElseThrow().points())).isLessThan(1);
        assertThat(Math.abs(report.wideChange().orElseThrow().points())).isBetween(1.0, Math.abs(greatest.points()));
    }

    @Test
    void whereNothingWasDoneHardlyAnyGroundHasChanged() {
        Resurvey report = compare(6, false);

        assertThat(report.changedSquareMetres()).isLessThan(0.1 * report.comparedSquareMetres());
        assertThat(report.steeperSquareMetres() + report.gentlerSquareMetres())
                .isLessThan(0.15 * report.comparedSquareMetres());
        assertThat(report.net().cubicMetres())
                .isCloseTo(0, within(3 * report.net().standardErrorCubicMetres()));
        assertThat(report.comparedSquareMetres()).isCloseTo(GREEN.areaSquareMetres(), within(5.0));
    }

    @Test
    void halfASecondSurveyComparesHalfTheGreen() {
        MadeSurface ground = MadeSurface.gentle(7, 8);
        MadeSurvey half = new MadeSurvey(ground, -10, -10, 10, 10, 9, 0.006, 3);
        try {
            SurveyedGround west = SurveyedGround.fit(GREEN, half.points(point -> point.east() < 0), Policy.defaults());
            Resurvey report = Resurvey.between(GREEN, fit(ground, 0.006, 4), west);
            assertThat(report.comparedSquareMetres()).isCloseTo(GREEN.areaSquareMetres() / 2, within(10.0));
            assertThat(report.notComparedSquareMetres()).isCloseTo(GREEN.areaSquareMetres() / 2, within(10.0));
        } catch (SurveyTooThin tooThin) {
            throw new AssertionError(tooThin);
        }
    }
}
