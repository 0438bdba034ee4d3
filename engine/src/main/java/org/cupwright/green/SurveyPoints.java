package org.cupwright.green;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Points of a survey: place and height, in the course's frame.
 *
 * <p>The arrays are not copied; they must not be changed afterwards.
 */
public final class SurveyPoints {
    private final double[] east;
    private final double[] north;
    private final double[] height;

    /** Three arrays of equal length, metres. */
    public SurveyPoints(double[] east, double[] north, double[] height) {
        if (east.length != north.length || east.length != height.length) {
            throw new IllegalArgumentException("points need as many northings and heights as eastings");
        }
        this.east = east;
        this.north = north;
        this.height = height;
    }

    public int size() {
        return east.length;
    }

    public double east(int i) {
        return east[i];
    }

    public double north(int i) {
        return north[i];
    }

    public double height(int i) {
        return height[i];
    }

    public double meanHeight() {
        return IntStream.range(0, size()).mapToDouble(this::height).average().orElse(0);
    }

    /** The points whose number passes. */
    public SurveyPoints keeping(IntPredicate keep) {
        int[] kept = IntStream.range(0, size()).filter(keep).toArray();
        return new SurveyPoints(
                IntStream.of(kept).mapToDouble(this::east).toArray(),
                IntStream.of(kept).mapToDouble(this::north).toArray(),
                IntStream.of(kept).mapToDouble(this::height).toArray());
    }
}
