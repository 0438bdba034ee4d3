package org.cupwright.green;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import org.assertj.core.api.SoftAssertions;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.democourse.MadeSurface;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.testing.TrueDisc;
import org.junit.jupiter.api.Test;

/**
 * Whether the standard errors are honest: how often intervals of ±1.96 standard errors hold the truth, on invented ground whose
 * truth is known, for noise and densities from careful ground surveys to airborne ones. Limits are our own choice.
 *
 * <p>Every survey has ground of its own, also between the cases: spots of one green hit and miss together, so it is the number of
 * greens that counts. Seeds come from a generator because neighbouring seeds of {@link Random} begin nearly alike.
 */
class SurveyedGroundCoverageTest {
    private static final double HALF_METRES = 7.5;
    private static final double[] SIGMAS = {0.005, 0.010, 0.025};
    private static final double[] DENSITIES = {4, 8, 25};
    private static final Outline GREEN = Shapes.rectangle(-HALF_METRES, -HALF_METRES, HALF_METRES, HALF_METRES);

    /** Hits among intervals: of both gradient components and the one along the true fall line, and of the two bends. */
    private static final class Tally {
        int slopes;
        int slopeHits;
        int fallLineHits;
        int bends;
        int bendHits;

        void slope(PlaneFit fit, TrueDisc truth) {
            double east = fit.gradientEast() - truth.gradientEast();
            double north = fit.gradientNorth() - truth.gradientNorth();
            slopes += 2;
            slopeHits += holds(east, fit.componentStandardError(1, 0)) + holds(north, fit.componentStandardError(0, 1));
            double size = Math.hypot(truth.gradientEast(), truth.gradientNorth());
            double unitEast = truth.gradientEast() / size;
            double unitNorth = truth.gradientNorth() / size;
            fallLineHits +=
                    2 * holds(unitEast * east + unitNorth * north, fit.componentStandardError(unitEast, unitNorth));
        }

        void bend(BendFit fit, TrueDisc truth) {
            bends += 2;
            bendHits += bendHolds(fit, truth, 1, 0) + bendHolds(fit, truth, 0, 1);
        }

        void add(Tally other) {
            slopes += other.slopes;
            slopeHits += other.slopeHits;
            fallLineHits += other.fallLineHits;
            bends += other.bends;
            bendHits += other.bendHits;
        }

        private static int bendHolds(BendFit fit, TrueDisc truth, double unitEast, double unitNorth) {
            BendFit.Change shown = fit.along(unitEast, unitNorth);
            double points = 200
                    * fit.discRadiusMetres()
                    * (unitEast * unitEast * truth.east2()
                            + 2 * unitEast * unitNorth * truth.eastNorth()
                            + unitNorth * unitNorth * truth.north2());
            return holds(shown.points() - points, shown.standardErrorPoints());
        }

        private static int holds(double error, double standardError) {
            return Math.abs(error) <= 1.96 * standardError ? 1 : 0;
        }

        double slopeShare() {
            return (double) slopeHits / slopes;
        }

        double fallLineShare() {
            return (double) fallLineHits / slopes;
        }

        double bendShare() {
            return (double) bendHits / bends;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "slope components %.3f, along the fall line %.3f, bends %.3f (of %d)",
                    slopeShare(),
                    fallLineShare(),
                    bendShare(),
                    slopes);
        }
    }

    @Test
    void intervalsOnSmoothGroundHoldTheTruthAsOftenAsTheySay() throws SurveyTooThin {
        SoftAssertions all = new SoftAssertions();
        SplittableRandom seeds = new SplittableRandom(1000 + Suite.seed());
        int surveys = Suite.count("intervals on smooth ground", 24, 3);
        for (double sigma : SIGMAS) {
            for (double density : DENSITIES) {
                Tally tally = new Tally();
                for (int i = 0; i < surveys; i++) {
                    long seed = seeds.nextLong();
                    tally(undulating(seed), sigma, density, seed, 0, tally);
                }
                String label = describe("smooth", sigma, density, tally);
                all.assertThat(tally.slopeShare()).as(label).isBetween(0.93, 0.997);
                all.assertThat(tally.fallLineShare()).as(label).isBetween(0.93, 0.999);
                all.assertThat(tally.bendShare()).as(label).isGreaterThanOrEqualTo(0.90);
            }
        }
        all.assertAll();
    }

    /** A step is rougher than the rest of the green and the penalty is one for all: the intervals may miss a little more. */
    @Test
    void intervalsWhereTheDiscTouchesATierStayNearWhatTheySay() throws SurveyTooThin {
        SoftAssertions all = new SoftAssertions();
        SplittableRandom seeds = new SplittableRandom(2000 + Suite.seed());
        int surveys = Suite.count("intervals on a tier", 24, 3);
        Tally everywhere = new Tally();
        for (double sigma : SIGMAS) {
            for (double density : DENSITIES) {
                Tally tally = new Tally();
                for (int i = 0; i < surveys; i++) {
                    long seed = seeds.nextLong();
                    MadeSurface ground = MadeSurface.gentle(seed, HALF_METRES);
                    tally(ground.withTier(tier(seed)), sigma, density, seed, 1 + Ground.DISC_RADIUS_METRES, tally);
                }
                String label = describe("tier", sigma, density, tally);
                all.assertThat(tally.slopeShare()).as(label).isGreaterThanOrEqualTo(0.90);
                everywhere.add(tally);
            }
        }
        all.assertThat(everywhere.slopeShare()).as("all: " + everywhere).isGreaterThanOrEqualTo(0.93);
        all.assertThat(everywhere.fallLineShare()).as("all: " + everywhere).isGreaterThanOrEqualTo(0.90);
        all.assertThat(everywhere.bendShare()).as("all: " + everywhere).isGreaterThanOrEqualTo(0.90);
        all.assertAll();
    }

    private static String describe(String ground, double sigma, double density, Tally tally) {
        String label =
                String.format(Locale.ROOT, "%s, %2.0f mm, %2.0f points/m²: %s", ground, 1000 * sigma, density, tally);
        System.out.println(label);
        return label;
    }

    /** A tilt of up to 3 % and ten bumps and hollows of up to 8 cm, two to four metres wide: lively, without a step. */
    private static MadeSurface undulating(long seed) {
        Random random = new Random(seed);
        List<MadeSurface.Bump> bumps = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double east = HALF_METRES * (2 * random.nextDouble() - 1);
            double north = HALF_METRES * (2 * random.nextDouble() - 1);
            double height = 0.08 * (2 * random.nextDouble() - 1);
            bumps.add(new MadeSurface.Bump(east, north, height, 1 + random.nextDouble()));
        }
        MadeSurface tilt = MadeSurface.gentle(seed, HALF_METRES);
        return new MadeSurface(0, tilt.planeEast(), tilt.planeNorth(), bumps, List.of());
    }

    /** A step of 0.3 m in 2 m through the middle, in a seeded direction. */
    private static MadeSurface.Tier tier(long seed) {
        double turn = 2 * Math.PI * new Random(seed).nextDouble();
        return new MadeSurface.Tier(0, 0, StrictMath.cos(turn), StrictMath.sin(turn), 0.3, 2);
    }

    /** Judges spots on a 1 m grid; with a reach above 0 only those so near the middle line of the surface's tier. */
    private static void tally(
            MadeSurface ground, double sigma, double density, long seed, double reachMetres, Tally tally)
            throws SurveyTooThin {
        MadeSurvey survey = new MadeSurvey(ground, -9.5, -9.5, 9.5, 9.5, density, sigma, seed);
        SurveyedGround fitted = SurveyedGround.fit(GREEN, survey.points(), Policy.defaults());
        for (double east = -7; east <= 7; east++) {
            for (double north = -7; north <= 7; north++) {
                MapPoint spot = new MapPoint(east, north);
                if (fitted.coverageAt(spot) == Coverage.KNOWN && near(ground.tiers(), spot, reachMetres)) {
                    TrueDisc truth = TrueDisc.of(ground, east, north, Ground.DISC_RADIUS_METRES);
                    tally.slope(fitted.planeAt(spot).orElseThrow(), truth);
                    tally.bend(fitted.bendAt(spot, Ground.DISC_RADIUS_METRES).orElseThrow(), truth);
                }
            }
        }
    }

    private static boolean near(List<MadeSurface.Tier> tiers, MapPoint spot, double reachMetres) {
        return tiers.isEmpty()
                || tiers.stream()
                        .anyMatch(tier -> Math.abs(spot.east() * tier.unitEast() + spot.north() * tier.unitNorth())
                                <= reachMetres);
    }
}
