package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Whether the ground about the hole is level enough for the day's green speed and for the course, in percent of slope.
 *
 * <p>Above the limit it is not; from the caution on, and below the wet limit when rain is expected (sentence {@code
 * wet}), somebody should look.
 */
final class LevelRule implements Rule {
    private final WorstAbout about;
    private final LevelLimits limits;

    LevelRule(SpotGrid grid, DayConditions day, Policy policy) {
        this.about = new WorstAbout(grid, this::at);
        this.limits = LevelLimits.of(day, policy);
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        return Unit.PERCENT.result(RuleId.LEVEL, about.of(judged));
    }

    private RuleAnswer at(SpotGround spot) {
        double percent = spot.slopePercent();
        double error = 100 * spot.slopeError();
        double either = LeaningOutcome.ERRORS * error;
        LeaningOutcome said =
                LeaningOutcome.between(Math.max(0, percent - either), percent, percent + either, limits::outcome);
        RuleAnswer answer = RuleAnswer.atMost(said, percent, limits.limitPercent(), error);
        double wetPercent = limits.wetPercent();
        boolean reachesWet = percent - either < wetPercent;
        boolean wet = said.outcome() == Outcome.CAUTION && reachesWet && percent < limits.cautionPercent();
        return wet
                ? RuleAnswer.of(said, percent, wetPercent, percent - wetPercent, error)
                        .saying("wet")
                : answer;
    }
}
