package org.cupwright.turf.growth;

import java.time.LocalDate;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.weather.WeatherSource;

/**
 * A clock in calendar days that slow growth stretches, and never beyond its cap.
 *
 * <p>It runs out on the first day that is as long after the start as the mean growth since the start asks for:
 * {@link #growingDays} at a mean of 0.5 or more, {@link #slowDays} at 0.1 or less, straight in between. The bounds 0.5
 * and 0.1 are our choice. Nothing waits for growth without end.
 *
 * @param growingDays length while the grass grows
 * @param slowDays length where it hardly grows
 * @param capDays never longer than this
 */
public record GrowthClock(int growingDays, int slowDays, int capDays) {
    /** Mean growth from which the clock runs at its shorter length. */
    public static final double GROWING = 0.5;

    /** Mean growth below which it runs at its longer length. */
    public static final double SLOW = 0.1;

    public GrowthClock {
        slowDays = Math.max(growingDays, slowDays);
        if (growingDays < 1 || capDays < 1) {
            throw new IllegalArgumentException("a clock of " + growingDays + " days, cap " + capDays);
        }
    }

    /** Rest from foot traffic about an old hole, from the day on which the hole was left. */
    public static GrowthClock wearRest(Policy policy) {
        return new GrowthClock(
                policy.get(TurfPolicy.WEAR_REST_DAYS),
                policy.get(TurfPolicy.WEAR_REST_SLOW_DAYS),
                policy.get(TurfPolicy.WEAR_REST_CAP_DAYS));
    }

    /** How long a plug's outline stays visible, a guess, from the day on which it was set or last disturbed. */
    public static GrowthClock plug(Policy policy) {
        int slow = policy.get(TurfPolicy.PLUG_SLOW_DAYS);
        int growing = policy.get(TurfPolicy.PLUG_DAYS);
        return new GrowthClock(growing, slow, Math.max(growing, slow));
    }

    /** Days asked for at a mean growth, before the cap. */
    public double daysAt(double meanGrowth) {
        double share = (GROWING - meanGrowth) / (GROWING - SLOW);
        return growingDays + Math.min(1, Math.max(0, share)) * (slowDays - growingDays);
    }

    /** When a clock that started before anything is known of growth has run out at the latest. */
    public ClockEnd latestFrom(LocalDate start) {
        return new ClockEnd(start.plusDays(capDays - 1L), capDays, GrowthSeries.ASSUMED_GROWTH, WeatherSource.ASSUMED);
    }

    /** When the clock that starts on a day runs out. */
    public ClockEnd endFrom(LocalDate start, GrowthSeries growth) {
        for (int days = Math.min(growingDays, capDays); ; days++) {
            LocalDate after = start.plusDays(days);
            double mean = growth.sum(start, after) / days;
            if (days >= capDays || days >= daysAt(mean)) {
                return new ClockEnd(after.minusDays(1), days, mean, growth.weakest(start, after));
            }
        }
    }
}
