package org.cupwright.green.strips;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Outline;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.FactorLikelihood;
import org.cupwright.green.spline.FactorPrior;
import org.cupwright.green.strips.StripDiscs.Disc;

/**
 * How much the points of a survey share of their errors, from the ground that it covers in several strips: lines of
 * flight, set-ups, walks. Each has a realisation of its own of what points share, while the ground is the same.
 *
 * <p>Over discs that lie apart, differences of the strips' slopes have the covariance V + f²·S: V from what each point
 * is off by itself, S from what is shared with the amplitude that is set, in each of the strips. What that tells of f
 * is {@link FactorLikelihood}. Nothing is told of an error that all strips have alike.
 */
public final class StripMeasure {
    /** Radius of a disc in lengths of the process, and its bounds, m (our choice: ground is a quadratic within). */
    private static final double RADIUS_LENGTHS = 0.5;

    private static final double LEAST_RADIUS_METRES = 1;
    private static final double GREATEST_RADIUS_METRES = 3;

    /** Radius where errors drift along a walk: some lines of it lie within, m (our choice). */
    private static final double WALK_RADIUS_METRES = 1.5;

    /** Points of a strip by which S is summed over a disc (our choice: what is shared changes little there). */
    private static final int SHARED_POINTS = 32;

    private final List<Spot> spots;
    private final SharedLikeness likeness;

    /** A disc's fit to all of its points, and to some. */
    private record Spot(StripFit all, StripFit some) {}

    private StripMeasure(List<Spot> spots, SharedLikeness likeness) {
        this.spots = spots;
        this.likeness = likeness;
    }

    /**
     * Measures what is shared.
     *
     * @param green where slopes are compared
     * @param points of this green, in strips, in the order in which they came
     * @param set what such points are set to share
     */
    public static StripTold of(Outline green, SurveyPoints points, Sharing set) {
        long strips = IntStream.range(0, points.count())
                .map(points::strip)
                .filter(strip -> strip != SurveyPoints.NO_STRIP)
                .distinct()
                .count();
        if (strips < 2) {
            return StripTold.nothing(StripTold.Why.ONE_STRIP);
        }
        if (set.isNone()) {
            return StripTold.nothing(StripTold.Why.NOTHING_SET);
        }
        List<Spot> spots = spots(green, points, radius(set));
        return spots.size() < FactorLikelihood.LEAST_SPOTS
                ? StripTold.nothing(StripTold.Why.LITTLE_OVERLAP)
                : StripTold.measured(new StripMeasure(spots, new SharedLikeness(points, set)).amplitude(set));
    }

    private static double radius(Sharing set) {
        double radius = RADIUS_LENGTHS * set.lengthMetres();
        return set.alongWalk()
                ? WALK_RADIUS_METRES
                : Math.max(LEAST_RADIUS_METRES, Math.min(GREATEST_RADIUS_METRES, radius));
    }

    private static List<Spot> spots(Outline green, SurveyPoints points, double radius) {
        List<Spot> spots = new ArrayList<>();
        for (Disc disc : new StripDiscs(points, radius).on(green)) {
            try {
                StripFit all = StripFit.of(points, disc, radius);
                spots.add(new Spot(all, all.thinned(SHARED_POINTS)));
            } catch (ArithmeticException onFewLines) {
                continue; // such a disc tells nothing
            }
        }
        return spots;
    }

    private SharedAmplitude amplitude(Sharing set) {
        int rows = spots.stream().mapToInt(spot -> spot.all.rows()).sum();
        double[] differences = new double[rows];
        double[][] noise = new double[rows][rows];
        double[][] shared = new double[rows][rows];
        int at = 0;
        for (Spot spot : spots) {
            for (int row = 0; row < spot.all.rows(); row++) {
                differences[at + row] = spot.all.difference(row);
            }
            put(spot.all.noise(), noise, at, at);
            int other = 0;
            for (Spot beside : spots) {
                put(shared(spot.some, beside.some), shared, at, other);
                other += beside.some.rows();
            }
            at += spot.all.rows();
        }
        return amplitude(FactorLikelihood.of(differences, noise, shared), set);
    }

    /** What is set pulls the amplitude its way a little. So how far off that may be, strips are asked alone. */
    private static SharedAmplitude amplitude(FactorLikelihood told, Sharing set) {
        double factor = told.after(FactorPrior.wide()).factor();
        double error = told.after(FactorPrior.none()).errorOf(factor);
        double sigma = set.sigmaMetres();
        return new SharedAmplitude(sigma * factor, sigma * error, set.lengthMetres());
    }

    private static void put(double[][] block, double[][] into, int row, int column) {
        for (int i = 0; i < block.length; i++) {
            System.arraycopy(block[i], 0, into[row + i], column, block[i].length);
        }
    }

    /** Covariance of the differences over two discs, or over one, from what points share. */
    private double[][] shared(StripFit one, StripFit other) {
        double[][] covariance = new double[one.rows()][other.rows()];
        for (int a = 0; a < one.disc.members().size(); a++) {
            for (int b = 0; b < other.disc.members().size(); b++) {
                if (one.strip(a) == other.strip(b)) {
                    add(one, a, other, b, covariance);
                }
            }
        }
        return covariance;
    }

    private void add(StripFit one, int a, StripFit other, int b, double[][] covariance) {
        int[] from = one.disc.members().get(a);
        int[] to = other.disc.members().get(b);
        for (int i = 0; i < from.length; i++) {
            double[] row = new double[to.length];
            for (int j = 0; j < to.length; j++) {
                row[j] = likeness.covariance(from[i], to[j]);
            }
            for (int k = 0; k < other.rows(); k++) {
                double sum = StripFit.dot(row, other.weights(b)[k]);
                for (int m = 0; m < one.rows(); m++) {
                    covariance[m][k] += one.weights(a)[m][i] * sum;
                }
            }
        }
    }
}
