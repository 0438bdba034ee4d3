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
    /** The strip of a point of which no strip is known. */
    public static final int NO_STRIP = -1;

    private final double[] east;
    private final double[] north;
    private final double[] height;
    private final double cellMetres;
    private final double sigmaMetres;
    private final Told told;

    /**
     * What is known of the points besides where they lie.
     *
     * @param strips the strip of each; none where they are not told apart
     */
    private record Told(Optional<SurveyKind> kind, Optional<SharedAmplitude> measured, int[] strips) {
        static final Told NOTHING = new Told(Optional.empty(), Optional.empty(), new int[0]);
    }

    private SurveyPoints(double[] east, double[] north, double[] height, double cellMetres, double sigmaMetres) {
        this(east, north, height, cellMetres, sigmaMetres, Told.NOTHING);
    }

    private SurveyPoints(
            double[] east, double[] north, double[] height, double cellMetres, double sigmaMetres, Told told) {
        if (east.length != north.length || east.length != height.length) {
            throw new IllegalArgumentException(
                    "coordinates of different counts: " + east.length + ", " + north.length + ", " + height.length);
        }
        this.east = checked(east);
        this.north = checked(north);
        this.height = checked(height);
        this.cellMetres = cellMetres;
        this.sigmaMetres = sigmaMetres;
        this.told = told;
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

    private SurveyPoints with(Told other) {
        return new SurveyPoints(east, north, height, cellMetres, sigmaMetres, other);
    }

    /** The same points, of a survey of this kind: it tells what they share of their errors. */
    public SurveyPoints as(SurveyKind of) {
        return with(new Told(Optional.of(of), told.measured, told.strips));
    }

    /** The kind of survey; without one points are taken to share nothing of their errors. */
    public Optional<SurveyKind> kind() {
        return told.kind;
    }

    /** The same points after it was measured how much they share of their errors. */
    public SurveyPoints sharing(SharedAmplitude measured) {
        return with(new Told(told.kind, Optional.of(measured), told.strips));
    }

    /** How much they share of their errors, where the survey itself has shown it. */
    public Optional<SharedAmplitude> measured() {
        return told.measured;
    }

    /**
     * The same points in strips: lines of flight, set-ups, walks.
     *
     * @param strips the strip of each point, {@link #NO_STRIP} where it is not known
     */
    public SurveyPoints inStrips(int[] strips) {
        if (strips.length != east.length) {
            throw new IllegalArgumentException(east.length + " points, but " + strips.length + " strips");
        }
        return with(new Told(told.kind, told.measured, strips.clone()));
    }

    /** Whether it was said in which strips the points were taken, were it a single one. */
    public boolean hasStrips() {
        return told.strips.length > 0;
    }

    /** The strip of a point; strips must have been said. */
    public int strip(int i) {
        return told.strips[i];
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
        int[] strips =
                hasStrips() ? Arrays.stream(chosen).map(i -> told.strips[i]).toArray() : told.strips;
        return new SurveyPoints(
                pick(east, chosen),
                pick(north, chosen),
                pick(height, chosen),
                cellMetres,
                sigmaMetres,
                new Told(told.kind, told.measured, strips));
    }

    /** These points and then others, scattered; of what they are nothing is told. */
    public SurveyPoints followedBy(SurveyPoints others) {
        return new SurveyPoints(
                joined(east, others.east),
                joined(north, others.north),
                joined(height, others.height),
                Double.NaN,
                Double.NaN);
    }

    private static double[] joined(double[] first, double[] second) {
        double[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    private static double[] pick(double[] values, int[] chosen) {
        return Arrays.stream(chosen).mapToDouble(i -> values[i]).toArray();
    }
}
