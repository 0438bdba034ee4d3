package org.cupwright.formats.points;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.cupwright.green.SurveyPoints;

/** Slopes of planes through a green's raw points, rise over run: a check of units, not a measurement of the green. */
public final class RoughSlopes {
    /** Sides of the squares, m (our choice: 60 points at 4 points/m², whose noise of 25 mm makes 0.3 % of slope). */
    private static final double SQUARE_METRES = 4;

    private RoughSlopes() {}

    /** The slope of the one plane through all points; empty where they are few or lie along a line. */
    public static OptionalDouble whole(SurveyPoints points) {
        PlaneMoments all = new PlaneMoments();
        for (int i = 0; i < points.count(); i++) {
            add(points, i, all);
        }
        return all.slope();
    }

    /** The middle value of the slopes of planes through the points of squares: half the ground is steeper. */
    public static OptionalDouble middle(SurveyPoints points) {
        Map<Long, PlaneMoments> squares = new TreeMap<>();
        for (int i = 0; i < points.count(); i++) {
            long column = (long) Math.floor(points.east(i) / SQUARE_METRES);
            long row = (long) Math.floor(points.north(i) / SQUARE_METRES);
            add(points, i, squares.computeIfAbsent(column * 100_000_007L + row, square -> new PlaneMoments()));
        }
        double[] slopes = squares.values().stream()
                .map(PlaneMoments::slope)
                .flatMapToDouble(OptionalDouble::stream)
                .sorted()
                .toArray();
        return slopes.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(slopes[slopes.length / 2]);
    }

    private static void add(SurveyPoints points, int i, PlaneMoments moments) {
        moments.add(
                points.east(i) - points.east(0),
                points.north(i) - points.north(0),
                points.heightMetres(i) - points.heightMetres(0));
    }
}
