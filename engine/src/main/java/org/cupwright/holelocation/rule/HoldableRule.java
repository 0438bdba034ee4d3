package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.LeaveMeter;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Whether a putt from any side can be stopped by the hole: how far the worst ball rolls on that crosses it at the
 * course's pace, m.
 *
 * <p>The leave is as uncertain as the slope that makes it. On a plane of slope s a ball that would run p past on the
 * level rests at L = p·ρ/(ρ − s), so a leave L stands for the slope s = ρ(1 − p/L), and its bounds are those of s ± two
 * standard errors of the slope along the fall line (our choice: the worst ball runs nearly down it). A leave shorter
 * than p stands for a climb.
 */
final class HoldableRule implements Rule {
    private final WorstAbout about;
    private final double resistance;
    private final double pastMetres;
    private final double limitMetres;
    private final double cautionMetres;

    HoldableRule(SpotGrid grid, DayConditions day, Policy policy) {
        this.about = new WorstAbout(grid, this::at);
        this.resistance = day.fastest().rollingResistance();
        this.pastMetres = policy.get(HoldPolicy.PAST_METRES);
        this.limitMetres = policy.get(HoldPolicy.HOLD_METRES);
        this.cautionMetres = Math.max(limitMetres, policy.get(HoldPolicy.HOLD_CAUTION_METRES));
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        return Unit.METRES.result(RuleId.HOLDABLE, about.of(judged));
    }

    private RuleAnswer at(SpotGround spot) {
        if (!spot.leave().known()) {
            return RuleAnswer.notChecked();
        }
        double leave = spot.leave().worstMetres();
        double slope = resistance * (1 - pastMetres / leave);
        double shorter = onSlope(slope - LeaningOutcome.ERRORS * spot.slopeError());
        double longer = onSlope(slope + LeaningOutcome.ERRORS * spot.slopeError());
        LeaningOutcome said = LeaningOutcome.between(shorter, leave, longer, this::outcome);
        double error = spot.slopeError() * leave * leave / (pastMetres * resistance);
        return RuleAnswer.atMost(said, leave, limitMetres, error);
    }

    private double onSlope(double slope) {
        double left = resistance - slope;
        return left <= 0
                ? LeaveMeter.FARTHEST_METRES
                : Math.min(LeaveMeter.FARTHEST_METRES, pastMetres * resistance / left);
    }

    private Outcome outcome(double leaveMetres) {
        if (leaveMetres <= limitMetres) {
            return Outcome.PASS;
        }
        return leaveMetres <= cautionMetres ? Outcome.CAUTION : Outcome.FAIL;
    }
}
