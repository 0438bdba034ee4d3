package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.testing.TrueDisc;
import org.junit.jupiter.api.Test;

/**
 * What a fit makes of a tier of 0.3 m in 2 m on invented ground, 8 points/m²: the slope at its middle and the mean
 * profile across it. Limits are our own choice.
 */
class TierProfileTest {
    private static final double HALF = 5;
    private static final Outline GREEN = Shapes.rectangle(-HALF, -HALF, HALF, HALF);
    /** The step's foot and top lie so far from its middle, and the profile is looked at two metres beyond. */
    private static final double FOOT = 1;

    private static final double STEP = 0.25;

    /**
     * For one survey: slope at the middle over the true one, then height errors (m) along the profile from foot and top
     * on. The slope is NaN where chance left a gap of the survey right there, and the ground says so.
     */
    private static double[] survey(long seed, double sigma) {
        double turn = 2 * Math.PI * new SplittableRandom(seed).nextDouble();
        MadeSurface.Tier tier = new MadeSurface.Tier(0, 0, StrictMath.cos(turn), StrictMath.sin(turn), 0.3, 2);
        MadeSurface ground = MadeSurface.gentle(seed, HALF).withTier(tier);
        SurveyedGround fitted = fit(ground, sigma, seed);
        TrueDisc truth = TrueDisc.of(ground, 0, 0, Ground.DISC_RADIUS_METRES);
        double slope = fitted.planeAt(new MapPoint(0, 0)).map(PlaneFit::slope).orElse(Double.NaN);
        double[] out = new double[1 + 2 * profileSpots()];
        out[0] = slope / Math.hypot(truth.gradientEast(), truth.gradientNorth());
        Surface surface = fitted.surface().orElseThrow();
        for (int i = 0; i < profileSpots(); i++) {
            double from = FOOT + STEP * i;
            out[1 + 2 * i] = off(surface, ground, tier, from);
            out[2 + 2 * i] = off(surface, ground, tier, -from);
        }
        return out;
    }

    private static int profileSpots() {
        return (int) Math.round(2 / STEP) + 1;
    }

    /** Mean height error on a line along the tier, 2 m long. */
    private static double off(Surface surface, Surface ground, MadeSurface.Tier tier, double across) {
        Jet jet = new Jet();
        double sum = 0;
        for (double along = -1; along <= 1; along += 0.5) {
            double east = across * tier.unitEast() - along * tier.unitNorth();
            double north = across * tier.unitNorth() + along * tier.unitEast();
            surface.at(east, north, jet);
            double height = jet.z;
            ground.at(east, north, jet);
            sum += height - jet.z;
        }
        return sum / 5;
    }

    private static SurveyedGround fit(MadeSurface ground, double sigma, long seed) {
        double half = HALF + 2;
        try {
            return SurveyedGround.fit(
                    GREEN,
                    new MadeSurvey(ground, -half, -half, half, half, 8, sigma, seed).points(),
                    Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException("seed " + seed, tooThin);
        }
    }

    private static void check(double sigma, double slopeWithin, double profileMetres) {
        int count = Suite.count("tier profile at " + Math.round(1000 * sigma) + " mm", 200, 4);
        long[] seeds = new SplittableRandom(950 + Suite.seed()).longs(count).toArray();
        List<double[]> surveys = IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> survey(seeds[i], sigma))
                .toList();
        double[] mean = new double[1 + 2 * profileSpots()];
        Arrays.setAll(
                mean,
                i -> surveys.stream()
                        .filter(one -> i > 0 || !Double.isNaN(one[0])) // heights are never left out
                        .mapToDouble(one -> one[i])
                        .average()
                        .orElseThrow());
        long gaps = surveys.stream().filter(one -> Double.isNaN(one[0])).count();
        double worst = Arrays.stream(mean).skip(1).map(Math::abs).max().orElseThrow();
        String label = String.format(
                Locale.ROOT,
                "%.0f mm: mid-tier slope %.3f of the true one, worst mean profile error %.2f mm, seed %d",
                1000 * sigma,
                mean[0],
                1000 * worst,
                Suite.seed());
        System.out.println(label);
        // with few surveys the mean still holds noise: three times what is left of a height's error of about σ/3
        double noise = count >= 200 ? 0 : 3 * sigma / 3 / Math.sqrt(count);
        // 8 points a square metre leave a circle of half a metre empty once in 500 surveys: exp(-8 * pi / 4)
        assertThat(gaps).as(label).isLessThanOrEqualTo(2);
        assertThat(mean[0]).as(label).isBetween(1 - slopeWithin, 1 + slopeWithin);
        assertThat(worst).as(label).isLessThanOrEqualTo(profileMetres + noise);
    }

    @Test
    void carefulSurveysShowTheTierAsItIs() {
        check(0.005, 0.05, 0.003);
        check(0.010, 0.05, 0.003);
    }

    @Test
    void airborneSurveysShowItNearlySo() {
        check(0.025, 0.10, 0.005);
    }
}
