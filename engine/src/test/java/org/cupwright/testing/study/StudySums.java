package org.cupwright.testing.study;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What was counted on each survey of a study, for positions away from any step and for those whose disc touches one.
 *
 * <p>Spots of one survey hit and miss together, so it is the number of surveys that counts: every figure comes with its
 * error from the spread between surveys.
 */
public final class StudySums {
    /** What is summed up, survey by survey. */
    enum Sum {
        COMPONENTS,
        COMPONENT_HITS,
        WIDTHS,
        RAW_WIDTHS,
        GENTLE_POSITIONS,
        FALL_LINE_ERROR,
        SYSTEMATIC_SQUARES,
        BENDS,
        BEND_HITS,
        EVEN_POSITIONS,
        EVEN_FAILED,
        UNEVEN_POSITIONS,
        UNEVEN_PASSED,
        ERROR_SQUARES
    }

    private final double[][][] sums;

    /** @param sums by survey, group (0 away from steps, 1 at one) and {@link Sum} */
    private StudySums(double[][][] sums) {
        this.sums = sums;
    }

    static StudySums empty() {
        return new StudySums(new double[1][2][Sum.values().length]);
    }

    /** Surveys of several studies as one. */
    public static StudySums together(List<StudySums> surveys) {
        return new StudySums(
                surveys.stream().flatMap(one -> List.of(one.sums).stream()).toArray(double[][][]::new));
    }

    void add(boolean atStep, Sum sum, double value) {
        sums[0][atStep ? 1 : 0][sum.ordinal()] += value;
    }

    public int surveys() {
        return sums.length;
    }

    /** A figure and its error from the spread between surveys; NaN where nothing was counted. */
    public record Figure(double value, double error) {}

    /** The figures of one group. */
    public Group group(boolean atStep) {
        return new Group(atStep ? 1 : 0);
    }

    /** Figures of the positions at a step, or of all others. */
    public final class Group {
        private final int group;

        private Group(int group) {
            this.group = group;
        }

        /** Share of the 95 % intervals of a gradient component that hold the truth. */
        public Figure coverage() {
            return ratio(Sum.COMPONENT_HITS, Sum.COMPONENTS);
        }

        /** Mean width of an interval over that of the plane through the points of the disc alone. */
        public Figure widthAgainstRawPlane() {
            return ratio(Sum.WIDTHS, Sum.RAW_WIDTHS);
        }

        /** Mean standard error of a component, percentage points. */
        public Figure standardErrorPoints() {
            return ratio(Sum.WIDTHS, Sum.COMPONENTS);
        }

        /** Root mean square error of a component, percentage points. */
        public Figure rootMeanSquarePoints() {
            return root(ratio(Sum.ERROR_SQUARES, Sum.COMPONENTS));
        }

        /** Mean error along the true fall line where the ground hardly bends and no step is near, percentage points. */
        public Figure fallLineErrorPoints() {
            return ratio(Sum.FALL_LINE_ERROR, Sum.GENTLE_POSITIONS);
        }

        /** Root mean square of what the same fit gets wrong on points without noise, same ground, percentage points. */
        public Figure systematicPoints() {
            return root(ratio(Sum.SYSTEMATIC_SQUARES, Sum.GENTLE_POSITIONS));
        }

        /** Share of the 95 % intervals of a signed change of slope that hold the truth. */
        public Figure bendCoverage() {
            return ratio(Sum.BEND_HITS, Sum.BENDS);
        }

        /** Share of the positions with a true change of at most 1 point that fail. */
        public Figure evenGroundFailed() {
            return ratio(Sum.EVEN_FAILED, Sum.EVEN_POSITIONS);
        }

        /** Share of the positions with a true change above 2 points that pass. */
        public Figure unevenGroundPassed() {
            return ratio(Sum.UNEVEN_PASSED, Sum.UNEVEN_POSITIONS);
        }

        public double positions() {
            return total(Sum.COMPONENTS) / 2;
        }

        public double unevenPositions() {
            return total(Sum.UNEVEN_POSITIONS);
        }

        private double total(Sum sum) {
            return IntStream.range(0, sums.length)
                    .mapToDouble(i -> sums[i][group][sum.ordinal()])
                    .sum();
        }

        /** A ratio of sums over surveys, with the error of a ratio estimate. */
        private Figure ratio(Sum above, Sum below) {
            double divisor = total(below);
            double ratio = total(above) / divisor;
            double squares = 0;
            for (double[][] survey : sums) {
                double off = survey[group][above.ordinal()] - ratio * survey[group][below.ordinal()];
                squares += off * off;
            }
            double count = Math.max(2, sums.length);
            return new Figure(ratio, Math.sqrt(squares * count / (count - 1)) / divisor);
        }

        private Figure root(Figure square) {
            double value = Math.sqrt(square.value());
            return new Figure(value, square.error() / (2 * value));
        }
    }
}
