package org.cupwright.testing.trials;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Ground;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.Blunder;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * One kind of ground under one kind of survey, tried many times: a green of 10 by 10 m, surveyed 2 m beyond. Intervals
 * are held against the true plane and quadratic at random spots at least a metre inside.
 */
public final class GroundTrial {
    static final double HALF = 5;
    private static final double BEYOND = 2;
    private static final int SPOTS = 60;
    private static final double RADIUS = 0.91;
    static final Outline GREEN = new Outline(new GeometryFactory().createPolygon(new Coordinate[] {
        new Coordinate(-HALF, -HALF),
        new Coordinate(HALF, -HALF),
        new Coordinate(HALF, HALF),
        new Coordinate(-HALF, HALF),
        new Coordinate(-HALF, -HALF)
    }));

    /** What is wrong with some of the points. */
    public enum Blunders {
        NONE,
        /** Two of a hundred points, each by itself, 6 to 40 sd up or down. */
        SINGLE,
        /** One of a hundred points and the one nearest to it, both off by the same. */
        PAIRS,
        /** Three flags or feet a survey, 0.1 to 2 m above the ground. */
        FLAGS
    }

    private final TrialGround ground;
    private final TrialSurvey survey;
    private final Blunders blunders;

    public GroundTrial(TrialGround ground, TrialSurvey survey, Blunders blunders) {
        this.ground = ground;
        this.survey = survey;
        this.blunders = blunders;
    }

    public TrialCounts run(long seed, int surveys) {
        SplittableRandom seeds = new SplittableRandom(seed * 7919 + 31L * ground.ordinal() + survey.ordinal());
        long[] each = seeds.longs(surveys).toArray();
        return new TrialCounts(IntStream.range(0, surveys)
                .parallel()
                .mapToObj(i -> one(new SplittableRandom(each[i])))
                .toList());
    }

    private double[] one(SplittableRandom random) {
        TrialGround.Made made = ground.made(random.split());
        List<double[]> places = survey.places(random.split(), HALF + BEYOND);
        double[] height = heights(made, places, random.split());
        Set<Integer> bad = spoil(places, height, random.split());
        double[] x = places.stream().mapToDouble(place -> place[0]).toArray();
        double[] y = places.stream().mapToDouble(place -> place[1]).toArray();
        try {
            SurveyedGround fitted = SurveyedGround.fit(GREEN, SurveyPoints.scattered(x, y, height), Policy.defaults());
            double[] counts = new double[TrialCounts.Of.values().length];
            countPoints(places, bad, fitted, counts);
            countSpots(made, fitted, random.split(), counts);
            return counts;
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(ground + " " + survey, tooThin);
        }
    }

    private double[] heights(TrialGround.Made made, List<double[]> places, SplittableRandom random) {
        return places.stream()
                .mapToDouble(place -> made.height().at(place[0], place[1]) + survey.sigmaMetres * random.nextGaussian())
                .toArray();
    }

    /** Spoils some heights; the numbers of the points that are off by 6 sd or more. */
    private Set<Integer> spoil(List<double[]> places, double[] height, SplittableRandom random) {
        Set<Integer> bad = new HashSet<>();
        int count = switch (blunders) {
            case NONE -> 0;
            case SINGLE -> height.length / 50;
            case PAIRS -> height.length / 100;
            case FLAGS -> 3;
        };
        for (int i = 0; i < count; i++) {
            int point = random.nextInt(height.length);
            double sds = (6 + 34 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
            double off = blunders == Blunders.FLAGS
                    ? 0.1 * Math.pow(20, random.nextDouble())
                    : sds * Math.max(survey.sigmaMetres, 0.005);
            if (bad.add(point)) {
                height[point] += off;
            }
            int other = blunders == Blunders.PAIRS ? nearest(places, point) : point;
            if (bad.add(other)) {
                height[other] += off;
            }
        }
        return bad;
    }

    private static int nearest(List<double[]> places, int point) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < places.size(); i++) {
            double apart = Math.hypot(places.get(i)[0] - places.get(point)[0], places.get(i)[1] - places.get(point)[1]);
            if (i != point && apart < least) {
                least = apart;
                nearest = i;
            }
        }
        return nearest;
    }

    private static void countPoints(List<double[]> places, Set<Integer> bad, SurveyedGround fitted, double[] counts) {
        Set<MapPoint> out = new HashSet<>();
        for (Blunder blunder : fitted.blunders()) {
            out.add(blunder.place());
        }
        for (int i = 0; i < places.size(); i++) {
            MapPoint place = new MapPoint(places.get(i)[0], places.get(i)[1]);
            boolean isBad = bad.contains(i);
            boolean isOut = out.contains(place);
            add(counts, isBad ? TrialCounts.Of.BLUNDERS : TrialCounts.Of.SOUND, 1);
            if (isOut) {
                add(counts, isBad ? TrialCounts.Of.BLUNDERS_FOUND : TrialCounts.Of.SOUND_LOST, 1);
            }
        }
        add(counts, TrialCounts.Of.SURVEYS, 1);
        add(counts, TrialCounts.Of.STEPS_FOUND, fitted.spline().hasSteps() ? 1 : 0);
    }

    private static void add(double[] counts, TrialCounts.Of of, double more) {
        counts[of.ordinal()] += more;
    }

    private static void countSpots(
            TrialGround.Made made, SurveyedGround fitted, SplittableRandom random, double[] counts) {
        countSpots(made, fitted, fitted, random, counts);
    }

    /** @param survey where it says something, spots count */
    static void countSpots(
            TrialGround.Made made,
            SurveyedGround survey,
            SurveyedGround fitted,
            SplittableRandom random,
            double[] counts) {
        for (int i = 0; i < SPOTS; i++) {
            double x = (HALF - 1) * (2 * random.nextDouble() - 1);
            double y = (HALF - 1) * (2 * random.nextDouble() - 1);
            MapPoint spot = new MapPoint(x, y);
            if (survey.planeAt(spot).isPresent()) {
                countSpot(made, fitted, spot, counts);
            }
        }
    }

    private static void countSpot(TrialGround.Made made, SurveyedGround fitted, MapPoint spot, double[] counts) {
        boolean atStep = made.fromStep().at(spot.east(), spot.north()) <= RADIUS;
        double[] truth = TrueShape.over(made.height(), spot.east(), spot.north(), RADIUS);
        PlaneFit plane = fitted.planeAt(spot).orElseThrow();
        double east = plane.componentStandardError(1, 0);
        double north = plane.componentStandardError(0, 1);
        int held = held(plane.gradientEast() - truth[0], east) + held(plane.gradientNorth() - truth[1], north);
        add(counts, atStep ? TrialCounts.Of.SLOPES_AT_STEP : TrialCounts.Of.SLOPES, 2);
        add(counts, atStep ? TrialCounts.Of.SLOPES_AT_STEP_HELD : TrialCounts.Of.SLOPES_HELD, held);
        add(counts, atStep ? TrialCounts.Of.WIDTH_AT_STEP : TrialCounts.Of.WIDTH, 100 * (east + north));
        Optional<BendFit> bend = fitted.bendAt(spot, Ground.DISC_RADIUS_METRES);
        if (bend.isEmpty() && !fitted.readings().isEmpty()) {
            return; // nothing is said of changes about a reading that stands alone
        }
        BendFit.Change change = bend.orElseThrow().greatest();
        double off = Math.abs(change.points()) - 200 * RADIUS * TrueShape.greatestBend(truth);
        int changeHeld = held(off, change.standardErrorPoints());
        add(counts, atStep ? TrialCounts.Of.CHANGES_AT_STEP : TrialCounts.Of.CHANGES, 1);
        add(counts, atStep ? TrialCounts.Of.CHANGES_AT_STEP_HELD : TrialCounts.Of.CHANGES_HELD, changeHeld);
    }

    private static int held(double off, double error) {
        return Math.abs(off) <= 1.96 * error ? 1 : 0;
    }
}
