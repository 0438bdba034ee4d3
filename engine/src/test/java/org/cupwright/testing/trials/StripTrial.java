package org.cupwright.testing.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.SharingPolicy;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.strips.StripMeasure;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;

/**
 * Surveys of two strips, each with patches of its own, tried many times on rolling ground: 10 points/m² a strip, 6 mm
 * of noise.
 *
 * @param strips how the strips lie
 * @param metres standard deviation of what a strip's points share, over 3 m
 * @param setMetres what it is set to
 * @param seen which of the strips make up the survey's points; the strips are measured by all
 */
public record StripTrial(Strips strips, double metres, double setMetres, Seen seen) {
    private static final double REACH = GroundTrial.HALF + 2;
    private static final double PER_SQUARE_METRE = 10;
    private static final double NOISE = 0.006;
    private static final double LENGTH = 3;
    private static final int WAVES = 80;

    /** How strips lie on the green. */
    public enum Strips {
        /** Both cover all of it. */
        TWICE(-REACH, REACH),
        /** The one ends in the east, the other in the west: two thirds lie in both. */
        OVERLAPPING(-3.5, 3.5);

        private final double otherFrom;
        private final double oneTo;

        Strips(double otherFrom, double oneTo) {
            this.otherFrom = otherFrom;
            this.oneTo = oneTo;
        }

        private double east(int strip, SplittableRandom random) {
            return strip == 0 ? random.nextDouble(-REACH, oneTo) : random.nextDouble(otherFrom, REACH);
        }

        private double width(int strip) {
            return strip == 0 ? oneTo + REACH : REACH - otherFrom;
        }
    }

    /** Of which strips the survey is made. */
    public enum Seen {
        ALL,
        FIRST
    }

    /**
     * What came of it.
     *
     * @param asSet counts with what is set
     * @param measured counts with what the strips have measured
     * @param read the same after six level readings
     * @param mean mean of the amplitudes measured, m
     * @param meanError mean of their standard errors, m
     * @param within share of them that lie within two of their errors of the truth
     */
    public record Outcome(
            TrialCounts asSet, TrialCounts measured, TrialCounts read, double mean, double meanError, double within) {
        /** In a line. */
        public String told() {
            return String.format(
                    Locale.ROOT,
                    "measured %.2f±%.2f mm, %.3f within; slopes %s, %s, read %s; width %.3f, %.3f, %.3f",
                    1000 * mean,
                    1000 * meanError,
                    within,
                    asSet.slopesHeld(),
                    measured.slopesHeld(),
                    read.slopesHeld(),
                    width(asSet),
                    width(measured),
                    width(read));
        }

        private static double width(TrialCounts counts) {
            return counts.share(TrialCounts.Of.WIDTH, TrialCounts.Of.SLOPES).value();
        }
    }

    private record One(double[][] counts, SharedAmplitude amplitude) {}

    public Outcome run(long seed, int surveys) {
        SplittableRandom seeds = new SplittableRandom(seed * 4447 + 59L * strips.ordinal() + Math.round(1e4 * metres));
        long[] each = seeds.longs(surveys).toArray();
        List<One> all = IntStream.range(0, surveys)
                .parallel()
                .mapToObj(i -> one(new SplittableRandom(each[i])))
                .toList();
        return new Outcome(
                counts(all, 0),
                counts(all, 1),
                counts(all, 2),
                all.stream()
                        .mapToDouble(one -> one.amplitude.sigmaMetres())
                        .average()
                        .orElseThrow(),
                all.stream()
                        .mapToDouble(one -> one.amplitude.errorMetres())
                        .average()
                        .orElseThrow(),
                all.stream().filter(one -> isWithin(one.amplitude)).count() / (double) surveys);
    }

    private boolean isWithin(SharedAmplitude amplitude) {
        return Math.abs(amplitude.sigmaMetres() - metres) <= 2 * amplitude.errorMetres();
    }

    private static TrialCounts counts(List<One> all, int which) {
        return new TrialCounts(all.stream().map(one -> one.counts[which]).toList());
    }

    private One one(SplittableRandom random) {
        TrialGround.Made made = TrialGround.ROLLING.made(random.split());
        SurveyPoints points = points(made, random.split());
        Policy policy = Policy.defaults().with(SharingPolicy.DRONE_MILLIMETRES, 1000 * setMetres);
        SharedAmplitude amplitude = StripMeasure.of(GroundTrial.GREEN, points, SharingPolicy.of(points, policy))
                .measured()
                .orElseThrow();
        SurveyPoints survey = seen == Seen.ALL ? points : points.where(i -> points.strip(i) == 0);
        SurveyedGround asSet = fitted(survey, policy);
        SurveyedGround measured = fitted(survey.sharing(amplitude), policy);
        SurveyedGround read = measured.withReadings(SharedTrial.readings(made, random.split()));
        long spots = random.nextLong();
        double[][] counts = new double[3][TrialCounts.Of.values().length];
        int which = 0;
        for (SurveyedGround ground : List.of(asSet, measured, read)) {
            GroundTrial.countSpots(made, asSet, ground, new SplittableRandom(spots), counts[which++]);
        }
        return new One(counts, amplitude);
    }

    private SurveyPoints points(TrialGround.Made made, SplittableRandom random) {
        List<double[]> places = new ArrayList<>();
        for (int strip = 0; strip < 2; strip++) {
            double[][] waves = waves(random.split());
            long count = Math.round(PER_SQUARE_METRE * strips.width(strip) * 2 * REACH);
            for (long i = 0; i < count; i++) {
                double x = strips.east(strip, random);
                double y = random.nextDouble(-REACH, REACH);
                double height = made.height().at(x, y) + patch(waves, x, y) + NOISE * random.nextGaussian();
                places.add(new double[] {x, y, height, strip});
            }
        }
        return SurveyPoints.scattered(column(places, 0), column(places, 1), column(places, 2))
                .inStrips(places.stream().mapToInt(place -> (int) place[3]).toArray())
                .as(SurveyKind.DRONE);
    }

    private static double[] column(List<double[]> places, int column) {
        return places.stream().mapToDouble(place -> place[column]).toArray();
    }

    private static double[][] waves(SplittableRandom random) {
        double[][] waves = new double[WAVES][];
        for (int i = 0; i < WAVES; i++) {
            waves[i] = new double[] {
                random.nextGaussian() / LENGTH, random.nextGaussian() / LENGTH, 2 * Math.PI * random.nextDouble()
            };
        }
        return waves;
    }

    private double patch(double[][] waves, double x, double y) {
        double sum = 0;
        for (double[] wave : waves) {
            sum += Math.cos(wave[0] * x + wave[1] * y + wave[2]);
        }
        return metres * Math.sqrt(2.0 / WAVES) * sum;
    }

    private static SurveyedGround fitted(SurveyPoints points, Policy policy) {
        try {
            return SurveyedGround.fit(GroundTrial.GREEN, points, policy);
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(tooThin);
        }
    }
}
