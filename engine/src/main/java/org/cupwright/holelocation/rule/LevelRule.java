package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Whether the ground about the hole is level enough for the day's green speed and for the course, in percent of slope.
 *
 * <p>Above the limit it is not; from the caution on, and below the wet limit when rain is expected (sentence {@code wet}), somebody
 * should look.
 */
final class LevelRule implements Rule {
    private final double limitPercent;
    private final double cautionPercent;
    private final double wetPercent;

    LevelRule(DayConditions day, Policy policy) {
        double bySpeed =
                100 * policy.get(SlopePolicy.LEVEL_SHARE) * day.fastest().rollingResistance();
        double cap = policy.get(day.event() ? SlopePolicy.LEVEL_CAP_EVENT_PERCENT : SlopePolicy.LEVEL_CAP_PERCENT);
        this.limitPercent = Math.min(bySpeed, cap);
        this.cautionPercent = policy.get(SlopePolicy.LEVEL_CAUTION_PERCENT);
        this.wetPercent = day.rainExpected() ? policy.get(SlopePolicy.LEVEL_WET_PERCENT) : 0;
    }

    @Override
    public RuleResult judge(Site site) {
        return Unit.PERCENT.result(RuleId.LEVEL, Finding.worst(site, this::at));
    }

    private Finding at(SpotGround spot) {
        double percent = spot.slopePercent();
        double error = 100 * spot.slopeError();
        double either = Grade.ERRORS * error;
        Grade grade = Grade.between(Math.max(0, percent - either), percent, percent + either, this::outcome);
        Finding finding = Finding.atMost(grade, percent, limitPercent, error);
        boolean wet = grade.outcome() == Outcome.CAUTION && percent - either < wetPercent && percent < cautionPercent;
        return wet
                ? Finding.of(grade, percent, wetPercent, percent - wetPercent, error)
                        .saying("wet")
                : finding;
    }

    private Outcome outcome(double percent) {
        if (percent > limitPercent) {
            return Outcome.FAIL;
        }
        return percent >= cautionPercent || percent < wetPercent ? Outcome.CAUTION : Outcome.PASS;
    }
}
