package org.cupwright.testing.study;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;

/**
 * How honest the errors of a fitted ground are, on invented ground whose truth is known: one class of ground, one
 * noise, one density; every survey has ground and points of its own.
 *
 * <p>Greens are squares of {@value #SIDE_METRES} m, surveyed {@value #BEYOND_METRES} m beyond their edge. Positions
 * stand a metre apart, at least a metre inside. Truth is the plane, and the quadratic, of the true surface over the
 * same disc.
 */
public final class ErrorStudy {
    static final double SIDE_METRES = 10;
    public static final double HALF_METRES = SIDE_METRES / 2;
    public static final double BEYOND_METRES = 2;

    /** Positions are looked at so far from the middle, m. */
    private static final double POSITIONS_TO_METRES = HALF_METRES - 1;

    private static final Outline GREEN = Shapes.rectangle(-HALF_METRES, -HALF_METRES, HALF_METRES, HALF_METRES);

    private final GroundClass ground;
    private final double sigmaMetres;
    private final double perSquareMetre;

    private final Policy policy;

    public ErrorStudy(GroundClass ground, double sigmaMetres, double perSquareMetre) {
        this(ground, sigmaMetres, perSquareMetre, Policy.defaults());
    }

    public ErrorStudy(GroundClass ground, double sigmaMetres, double perSquareMetre, Policy policy) {
        this.policy = policy;
        this.ground = ground;
        this.sigmaMetres = sigmaMetres;
        this.perSquareMetre = perSquareMetre;
    }

    /** Surveys by several threads; the sums do not depend on how many. */
    public StudySums run(long seed, int surveys) {
        SplittableRandom seeds = new SplittableRandom(seed * 1000 + ground.ordinal());
        long[] each = seeds.longs(surveys).toArray();
        List<StudySums> sums = IntStream.range(0, surveys)
                .parallel()
                .mapToObj(i -> survey(each[i]))
                .toList();
        return StudySums.together(sums);
    }

    private StudySums survey(long seed) {
        GroundClass.Made made = ground.made(seed);
        double half = HALF_METRES + BEYOND_METRES;
        long noise = seed + Math.round(1000 * sigmaMetres) * 100 + Math.round(perSquareMetre);
        SurveyPoints points =
                new MadeSurvey(made.surface(), -half, -half, half, half, perSquareMetre, sigmaMetres, noise).points();
        try {
            SurveyedGround fitted = SurveyedGround.fit(GREEN, points, policy);
            return new SurveyErrors(made, points, fitted, sigmaMetres).at(positions());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException("seed " + seed, tooThin);
        }
    }

    private static List<MapPoint> positions() {
        List<MapPoint> positions = new ArrayList<>();
        for (double east = -POSITIONS_TO_METRES; east <= POSITIONS_TO_METRES; east++) {
            for (double north = -POSITIONS_TO_METRES; north <= POSITIONS_TO_METRES; north++) {
                positions.add(new MapPoint(east, north));
            }
        }
        return positions;
    }
}
