package org.cupwright.holelocation.judging;

import java.util.Arrays;
import java.util.Optional;

/**
 * How steep a green is over its spots, percent: one in twenty spots is flatter than p5, one in twenty steeper than p95.
 *
 * <p>Quantiles are interpolated between the two nearest spots.
 */
public record SlopeSpread(double p5, double median, double p95) {
    static Optional<SlopeSpread> of(double[] percents) {
        if (percents.length == 0) {
            return Optional.empty();
        }
        double[] sorted = percents.clone();
        Arrays.sort(sorted);
        return Optional.of(new SlopeSpread(quantile(sorted, 0.05), quantile(sorted, 0.5), quantile(sorted, 0.95)));
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
