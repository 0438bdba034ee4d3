package org.cupwright.formats.points;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.cupwright.green.SurveyPoints;

/**
 * The strips of a green's points, by what a file says of each: the number of its strip, or else the time at which it
 * was taken, from whose gaps strips follow.
 *
 * <p>Takes room only from the first point on of which something is said.
 */
final class StripColumns {
    /** A strip ends where no point was taken for longer than this, s (our choice: to turn takes longer). */
    static final double GAP_SECONDS = 30;

    /** More strips than this on one green are none: the column counts something else (our choice). */
    private static final int MOST_STRIPS = 50;

    private final Said strips = new Said();
    private final Said times = new Said();
    private int count;

    /** One column so far; not a number where nothing is said of a point. */
    private static final class Said {
        private DoubleStream.Builder values;

        void add(double value, int before) {
            if (values == null && !Double.isNaN(value)) {
                values = DoubleStream.builder();
                IntStream.range(0, before).forEach(i -> values.add(Double.NaN));
            }
            if (values != null) {
                values.add(value);
            }
        }

        double[] all() {
            return values == null ? new double[0] : values.build().toArray();
        }
    }

    /**
     * Takes what is said of the next point.
     *
     * @param strip its strip's number; not a number where that is not said
     * @param time when it was taken, s from any moment; not a number where that is not said
     */
    void add(double strip, double time) {
        strips.add(strip, count);
        times.add(time, count);
        count++;
    }

    /** The points in their strips; in none where nothing was said of any. */
    SurveyPoints told(SurveyPoints points) {
        double[] taken = times.all();
        int[] byName = byName(strips.all());
        int[] best = taken.length > 0 && strips(byName) < 2 ? byTime(taken) : byName;
        if (strips(best) > MOST_STRIPS) {
            Arrays.fill(best, SurveyPoints.NO_STRIP);
        }
        return points.inStrips(best);
    }

    private int[] byName(double[] numbers) {
        return IntStream.range(0, count)
                .map(i -> numbers.length == 0 || Double.isNaN(numbers[i]) ? SurveyPoints.NO_STRIP : (int) numbers[i])
                .toArray();
    }

    private static long strips(int[] of) {
        return Arrays.stream(of)
                .filter(strip -> strip != SurveyPoints.NO_STRIP)
                .distinct()
                .count();
    }

    private static int[] byTime(double[] times) {
        double[] sorted = Arrays.stream(times)
                .filter(time -> !Double.isNaN(time))
                .sorted()
                .toArray();
        double[] ends = IntStream.range(1, sorted.length)
                .filter(i -> sorted[i] - sorted[i - 1] > GAP_SECONDS)
                .mapToDouble(i -> sorted[i - 1])
                .toArray();
        return Arrays.stream(times).mapToInt(time -> strip(time, ends)).toArray();
    }

    /** How many strips had ended before. */
    private static int strip(double time, double[] ends) {
        if (Double.isNaN(time)) {
            return SurveyPoints.NO_STRIP;
        }
        int found = Arrays.binarySearch(ends, time);
        return found >= 0 ? found : -found - 1;
    }
}
