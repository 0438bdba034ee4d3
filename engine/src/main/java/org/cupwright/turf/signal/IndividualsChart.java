package org.cupwright.turf.signal;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Control chart of single measures and of the moves from one to the next.
 *
 * <p>Limits of the measures are {@code x̄ ± 3·MR̄/1.128}, the upper limit of the moves {@code 3.267·MR̄} (d2 and D4 for
 * two in a group; NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2).
 *
 * @param values in order of time, two or more
 * @param mean x̄
 * @param meanMove MR̄: mean size of the step from one value to the next
 * @param lowerLimit below it a value is out of the usual
 * @param upperLimit above it a value is out of the usual
 * @param upperMoveLimit a larger step is out of the usual
 */
public record IndividualsChart(
        List<Double> values,
        double mean,
        double meanMove,
        double lowerLimit,
        double upperLimit,
        double upperMoveLimit) {
    private static final double D2 = 1.128;
    private static final double D4 = 3.267;

    public IndividualsChart {
        values = List.copyOf(values);
    }

    /**
     * @throws IllegalArgumentException with fewer than two values
     */
    public static IndividualsChart of(List<Double> values) {
        if (values.size() < 2) {
            throw new IllegalArgumentException("a chart needs two values; there are " + values.size());
        }
        double sum = 0;
        double moves = 0;
        for (int i = 0; i < values.size(); i++) {
            sum += values.get(i);
            moves += i == 0 ? 0 : Math.abs(values.get(i) - values.get(i - 1));
        }
        double mean = sum / values.size();
        double meanMove = moves / (values.size() - 1);
        double reach = 3 * meanMove / D2;
        return new IndividualsChart(values, mean, meanMove, mean - reach, mean + reach, D4 * meanMove);
    }

    /** Indices of the values outside the limits. */
    public List<Integer> outside() {
        return IntStream.range(0, values.size())
                .filter(i -> values.get(i) < lowerLimit || values.get(i) > upperLimit)
                .boxed()
                .toList();
    }

    /** Indices of the values whose step from the one before is out of the usual. */
    public List<Integer> outsideMoves() {
        return IntStream.range(1, values.size())
                .filter(i -> Math.abs(values.get(i) - values.get(i - 1)) > upperMoveLimit)
                .boxed()
                .toList();
    }
}
