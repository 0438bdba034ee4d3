package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/**
 * Surveys such as no surveyor would hand over, made at random: heaps, lines, repeated points, wild heights. The fit
 * either says that it cannot, or every slope it gives is finite, has an error, and stands where enough points lie.
 */
class SurveyedGroundBadDataTest {
    private static final Outline GREEN = Shapes.circle(0, 0, 4);

    @Test
    void badSurveysNeverCrashAndNeverMakeUpSlopes() {
        int cases = Suite.count("bad surveys", 1000, 60);
        int fitted = 0;
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() + i;
            List<SurveyPoint> points = made(new Random(seed));
            try {
                check(SurveyedGround.fit(GREEN, SurveyPoints.scattered(points), Policy.defaults()), points, seed);
                fitted++;
            } catch (SurveyTooThin tooThin) {
                assertThat(tooThin.points()).as("seed " + seed).isLessThanOrEqualTo(points.size());
            }
        }
        assertThat(fitted).isBetween(cases / 4, cases - 1);
    }

    /** Up to five pieces, each a heap, a line, a patch, a repeated point or a few wild heights. */
    private static List<SurveyPoint> made(Random random) {
        List<SurveyPoint> points = new ArrayList<>();
        int pieces = random.nextInt(6);
        for (int piece = 0; piece < pieces; piece++) {
            double east = 8 * random.nextDouble() - 4;
            double north = 8 * random.nextDouble() - 4;
            double length = random.nextInt(3) == 0 ? 0 : 6 * random.nextDouble();
            double width = random.nextBoolean() ? 0 : 4 * random.nextDouble();
            double noise = random.nextInt(4) == 0 ? 100 * random.nextDouble() : 0.01;
            int count = 1 + random.nextInt(150);
            for (int i = 0; i < count; i++) {
                points.add(new SurveyPoint(
                        east + length * (random.nextDouble() - 0.5),
                        north + width * (random.nextDouble() - 0.5),
                        120 + 0.02 * east + noise * random.nextGaussian()));
            }
        }
        return points;
    }

    private static void check(SurveyedGround ground, List<SurveyPoint> points, long seed) {
        for (double east = -4; east <= 4; east += 0.5) {
            for (double north = -4; north <= 4; north += 0.5) {
                MapPoint spot = new MapPoint(east, north);
                String label = "seed " + seed + " at " + spot;
                boolean known = ground.coverageAt(spot) == Coverage.KNOWN;
                assertThat(ground.planeAt(spot).isPresent()).as(label).isEqualTo(known);
                if (known) {
                    PlaneFit plane = ground.planeAt(spot).orElseThrow();
                    assertThat(plane.slope()).as(label).isFinite();
                    assertThat(plane.slopeStandardError())
                            .as(label)
                            .isPositive()
                            .isFinite();
                    assertThat(ground.bendAt(spot, 0.91)
                                    .orElseThrow()
                                    .greatest()
                                    .standardErrorPoints())
                            .as(label)
                            .isPositive()
                            .isFinite();
                    assertThat(points.stream()
                                    .filter(point ->
                                            Math.hypot(point.east() - spot.east(), point.north() - spot.north())
                                                    <= 0.91)
                                    .count())
                            .as(label)
                            .isGreaterThanOrEqualTo(6);
                }
            }
        }
    }
}
