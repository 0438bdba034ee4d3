package org.cupwright.holelocation.rule;

import java.util.stream.DoubleStream;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.policy.Policy;

/**
 * The slopes, percent, at which the rule of level ground changes its answer on a day.
 *
 * @param limitPercent above it the ground is too steep
 * @param cautionPercent from it on somebody should look
 * @param wetPercent below it somebody should look, as water stands; 0 when no rain is expected
 */
public record LevelLimits(double limitPercent, double cautionPercent, double wetPercent) {
    public static LevelLimits of(DayConditions day, Policy policy) {
        double bySpeed =
                100 * policy.get(SlopePolicy.LEVEL_SHARE) * day.fastest().rollingResistance();
        double cap = policy.get(day.event() ? SlopePolicy.LEVEL_CAP_EVENT_PERCENT : SlopePolicy.LEVEL_CAP_PERCENT);
        return new LevelLimits(
                Math.min(bySpeed, cap),
                policy.get(SlopePolicy.LEVEL_CAUTION_PERCENT),
                day.rainExpected() ? policy.get(SlopePolicy.LEVEL_WET_PERCENT) : 0);
    }

    /** The answer at a slope that is known exactly. */
    public Outcome outcome(double percent) {
        if (percent > limitPercent) {
            return Outcome.FAIL;
        }
        return percent >= cautionPercent || percent < wetPercent ? Outcome.CAUTION : Outcome.PASS;
    }

    /** Whether the answer at a spot is the same all over two standard errors either way. */
    public boolean decides(double percent, double errorPercent) {
        double either = LeaningOutcome.ERRORS * errorPercent;
        double least = Math.max(0, percent - either);
        return LeaningOutcome.between(least, percent, percent + either, this::outcome)
                .leans()
                .isEmpty();
    }

    /** How many standard errors either way an answer must hold. */
    public static double errorsEitherWay() {
        return LeaningOutcome.ERRORS;
    }

    /** The slopes at which the answer changes, rising. */
    public double[] bounds() {
        return DoubleStream.of(wetPercent, cautionPercent, limitPercent)
                .filter(bound -> bound > 0)
                .filter(bound -> outcome(Math.nextDown(bound)) != outcome(Math.nextUp(bound)))
                .sorted()
                .distinct()
                .toArray();
    }

    /** The steepest slope that passes. */
    public double passesBelowPercent() {
        return Math.min(limitPercent, cautionPercent);
    }
}
