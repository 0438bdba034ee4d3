package org.cupwright.green;

import java.util.Arrays;

/** The way from each point of a survey to the next, in the order in which the points came. */
public final class Walk {
    /** Of points in the order of a walk the next is no farther off than so many mean spacings (our choice). */
    private static final double STEPS = 3;

    private Walk() {}

    /** Metres walked from the first point up to each, straight from point to point. */
    public static double[] metres(SurveyPoints points) {
        double[] metres = new double[points.count()];
        for (int i = 1; i < metres.length; i++) {
            metres[i] = metres[i - 1] + step(points, i);
        }
        return metres;
    }

    private static double step(SurveyPoints points, int i) {
        return Math.hypot(points.east(i) - points.east(i - 1), points.north(i) - points.north(i - 1));
    }

    /** Whether most points follow one of their neighbours, as they do where they were walked to one by one. */
    public static boolean isWalked(SurveyPoints points) {
        if (points.count() < 3 || points.gridCellMetres().isPresent()) {
            return false;
        }
        double[] steps = new double[points.count() - 1];
        Arrays.setAll(steps, i -> step(points, i + 1));
        Arrays.sort(steps);
        return steps[steps.length / 2] <= STEPS * spacingMetres(points);
    }

    /** The side of a square for each point within the box about all of them. */
    static double spacingMetres(SurveyPoints points) {
        double west = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.count(); i++) {
            west = Math.min(west, points.east(i));
            east = Math.max(east, points.east(i));
            south = Math.min(south, points.north(i));
            north = Math.max(north, points.north(i));
        }
        return Math.sqrt((east - west) * (north - south) / points.count());
    }
}
