package org.cupwright.green;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The points of a survey, kept compactly: scattered points, whose noise is found from the points themselves, or the
 * nodes of a grid, whose noise must be told because neighbouring nodes may have been smoothed together.
 */
public final class SurveyPoints {
    private final double[] east;
    private final double[] north;
    private final double[] height;
    private final double cellMetres;
    private final double sigmaMetres;
    private final Optional<SurveyKind> kind;

    private SurveyPoints(double[] east, double[] north, double[] height, double cellMetres, double sigmaMetres) {
        this(east, north, height, cellMetres, sigmaMetres, Optional.empty());
    }

    private SurveyPoints(
            double[] east,
            double[] north,
            double[] height,
            double cellMetres,
            double sigmaMetres,
            Optional<SurveyKind> kind) {
        if (east.length != north.length || east.length != height.length) {
            throw new IllegalArgumentException(
                    "coordinates of different counts: " + east.length + ", " + north.length + ", " + height.length);
        }
        this.east = checked(east);
        this.north = checked(north);
        this.height = checked(height);
        this.cellMetres = cellMetres;
        this.sigmaMetres = sigmaMetres;
        this.kind = kind;
    }

    private static double[] checked(double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("point " + i + " has no finite coordinate: " + values[i]);
            }
        }
        return values;
    }

    /**
     * Scattered points.
     *
     * @param east metres, course frame
     * @param north metres, course frame
     * @param heightMetres heights above one level
     */
    public static SurveyPoints scattered(double[] east, double[] north, double[] heightMetres) {
        return new SurveyPoints(east.clone(), north.clone(), heightMetres.clone(), Double.NaN, Double.NaN);
    }

    public static SurveyPoints scattered(List<SurveyPoint> points) {
        return new SurveyPoints(
                points.stream().mapToDouble(SurveyPoint::east).toArray(),
                points.stream().mapToDouble(SurveyPoint::north).toArray(),
                points.stream().mapToDouble(SurveyPoint::heightMetres).toArray(),
                Double.NaN,
                Double.NaN);
    }

    /**
     * Nodes of a square grid, without those that hold no height.
     *
     * @param cellMetres distance between neighbouring nodes
     * @param sigmaMetres standard deviation of a node's height
     */
    public static SurveyPoints grid(
            double cellMetres, double sigmaMetres, double[] east, double[] north, double[] heightMetres) {
        if (!(cellMetres > 0) || !(sigmaMetres > 0)) {
            throw new IllegalArgumentException(
                    "a grid needs a cell and a standard deviation above 0, not " + cellMetres + " and " + sigmaMetres);
        }
        return new SurveyPoints(east.clone(), north.clone(), heightMetres.clone(), cellMetres, sigmaMetres);
    }

    /** The same points, of a survey of this kind: it tells what they share of their errors. */
    public SurveyPoints as(SurveyKind of) {
        return new SurveyPoints(east, north, height, cellMetres, sigmaMetres, Optional.of(of));
    }

    /** The kind of survey; without one points are taken to share nothing of their errors. */
    public Optional<SurveyKind> kind() {
        return kind;
    }

    public int count() {
        return east.length;
    }

    public double east(int i) {
        return east[i];
    }

    public double north(int i) {
        return north[i];
    }

    public double heightMetres(int i) {
        return height[i];
    }

    /** Distance between neighbouring nodes; empty when the points are scattered. */
    public OptionalDouble gridCellMetres() {
        return present(cellMetres);
    }

    /** The standard deviation that came with a grid; empty when the points are scattered. */
    public OptionalDouble givenSigmaMetres() {
        return present(sigmaMetres);
    }

    /** Whether these are the very same points, in the same order, scattered or of the same grid. */
    public boolean sameAs(SurveyPoints other) {
        return Arrays.equals(east, other.east)
                && Arrays.equals(north, other.north)
                && Arrays.equals(height, other.height)
                && Double.compare(cellMetres, other.cellMetres) == 0
                && Double.compare(sigmaMetres, other.sigmaMetres) == 0;
    }

    private static OptionalDouble present(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The points whose number passes a test, in the same order. */
    public SurveyPoints where(IntPredicate wanted) {
        int[] chosen = IntStream.range(0, east.length).filter(wanted).toArray();
        return new SurveyPoints(
                pick(east, chosen), pick(north, chosen), pick(height, chosen), cellMetres, sigmaMetres, kind);
    }

    private static double[] pick(double[] values, int[] chosen) {
        return Arrays.stream(chosen).mapToDouble(i -> values[i]).toArray();
    }
}
