package org.cupwright.holelocation.levelround;

import org.cupwright.green.PlaneFit;
import org.cupwright.holelocation.rule.LevelLimits;

/**
 * How likely the rule of level ground answers at a spot once readings are in.
 *
 * <p>The readings' part of the error, {@code taken}, becomes known, the rest stays: the slope that will be shown is
 * normal about the one shown now with the deviation of that part, and its standard error is that of the rest. Slopes
 * are taken along the present fall line.
 */
final class Chances {
    private final LevelLimits limits;
    private final double[] bounds;

    Chances(LevelLimits limits) {
        this.limits = limits;
        this.bounds = limits.bounds();
    }

    boolean decided(PlaneFit plane) {
        return limits.decides(plane.slopePercent(), 100 * plane.slopeStandardError());
    }

    /** Chance of an answer that holds over two standard errors. */
    double decided(OpenSpot spot, GradientSpread taken) {
        double shown = spot.slopePercent();
        double moves = 100 * taken.along(spot.unitEast(), spot.unitNorth());
        double either =
                LevelLimits.errorsEitherWay() * 100 * spot.now().less(taken).along(spot.unitEast(), spot.unitNorth());
        double chance = 0;
        double from = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= bounds.length; i++) {
            double to = i < bounds.length ? bounds[i] - either : Double.POSITIVE_INFINITY;
            if (to > from) {
                chance += below(to, shown, moves) - below(from, shown, moves);
            }
            from = i < bounds.length ? bounds[i] + either : from;
        }
        return chance;
    }

    /** Chance that the spot passes over two standard errors. */
    double passes(OpenSpot spot, GradientSpread taken) {
        double moves = 100 * taken.along(spot.unitEast(), spot.unitNorth());
        double either =
                LevelLimits.errorsEitherWay() * 100 * spot.now().less(taken).along(spot.unitEast(), spot.unitNorth());
        double wet = limits.wetPercent() > 0 ? below(limits.wetPercent() + either, spot.slopePercent(), moves) : 0;
        return Math.max(0, below(limits.passesBelowPercent() - either, spot.slopePercent(), moves) - wet);
    }

    private static double below(double bound, double mean, double deviation) {
        if (Double.isInfinite(bound)) {
            return bound > 0 ? 1 : 0;
        }
        if (deviation < 1e-12) {
            return bound > mean ? 1 : 0;
        }
        return normal((bound - mean) / deviation);
    }

    /**
     * The normal distribution to 2.5e-4: Abramowitz and Stegun 26.2.18 (recalled). Rounds are ranked by it, nothing is
     * certified.
     */
    private static double normal(double x) {
        double t = Math.abs(x);
        double base = 1 + t * (0.196854 + t * (0.115194 + t * (0.000344 + t * 0.019527)));
        double tail = 0.5 / (base * base * base * base);
        return x >= 0 ? 1 - tail : tail;
    }
}
