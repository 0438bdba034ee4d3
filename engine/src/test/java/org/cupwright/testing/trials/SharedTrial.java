package org.cupwright.testing.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;

/**
 * Surveys whose points share errors, tried many times on rolling ground, before and after six level readings.
 *
 * @param survey where points are taken and how far each is off by itself
 * @param shared what they share
 * @param kind what the survey is said to be; null: its points are said to share nothing
 */
public record SharedTrial(TrialSurvey survey, SharedTrialErrors shared, SurveyKind kind) {
    private static final double BEYOND = 2;
    private static final double LEVEL = 0.001;
    private static final double[][] READ = {{-3, -3}, {-3, 3}, {0, -1.5}, {0, 1.5}, {3, -3}, {3, 3}};

    /**
     * Counts without readings, and with them.
     *
     * @param measured mean amplitude that the readings measured, m
     */
    public record Outcome(TrialCounts before, TrialCounts after, double measured) {}

    private record One(double[] before, double[] after, double measured) {}

    public Outcome run(long seed, int surveys) {
        SplittableRandom seeds = new SplittableRandom(seed * 6151 + 53L * survey.ordinal() + shared.ordinal());
        long[] each = seeds.longs(surveys).toArray();
        List<One> all = IntStream.range(0, surveys)
                .parallel()
                .mapToObj(i -> one(new SplittableRandom(each[i])))
                .toList();
        return new Outcome(
                new TrialCounts(all.stream().map(One::before).toList()),
                new TrialCounts(all.stream().map(One::after).toList()),
                all.stream().mapToDouble(One::measured).average().orElseThrow());
    }

    private One one(SplittableRandom random) {
        TrialGround.Made made = TrialGround.ROLLING.made(random.split());
        List<double[]> places = survey.places(random.split(), GroundTrial.HALF + BEYOND);
        double[] height = shared.of(places, random.split());
        SplittableRandom noise = random.split();
        for (int i = 0; i < height.length; i++) {
            height[i] +=
                    made.height().at(places.get(i)[0], places.get(i)[1]) + survey.sigmaMetres * noise.nextGaussian();
        }
        SurveyedGround ground = fitted(places, height);
        SurveyedGround read = ground.withReadings(readings(made, random.split()));
        long spots = random.nextLong();
        double[][] counts = new double[2][TrialCounts.Of.values().length];
        GroundTrial.countSpots(made, ground, ground, new SplittableRandom(spots), counts[0]);
        GroundTrial.countSpots(made, ground, read, new SplittableRandom(spots), counts[1]);
        return new One(counts[0], counts[1], read.sharing().orElseThrow().sigmaMetres());
    }

    private SurveyedGround fitted(List<double[]> places, double[] height) {
        double[] x = places.stream().mapToDouble(place -> place[0]).toArray();
        double[] y = places.stream().mapToDouble(place -> place[1]).toArray();
        SurveyPoints points = SurveyPoints.scattered(x, y, height);
        try {
            return SurveyedGround.fit(GroundTrial.GREEN, kind == null ? points : points.as(kind), Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(toString(), tooThin);
        }
    }

    static List<LevelReading> readings(TrialGround.Made made, SplittableRandom random) {
        List<LevelReading> readings = new ArrayList<>();
        for (double[] spot : READ) {
            double[] truth = TrueShape.over(made.height(), spot[0], spot[1], 0.91);
            readings.add(new LevelReading(
                    new MapPoint(spot[0], spot[1]),
                    truth[0] + LEVEL * random.nextGaussian(),
                    truth[1] + LEVEL * random.nextGaussian(),
                    LEVEL));
        }
        return readings;
    }
}
