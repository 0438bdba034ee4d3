package org.cupwright.holelocation.rule;

import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SteepGround;
import org.cupwright.policy.Policy;

/**
 * How far the position is from steep ground, m: it fails near ground on which a ball does not stop, and is a caution near ground
 * where it hardly does.
 *
 * <p>Ground is certainly steep where its slope is with two standard errors taken off, and possibly where it is with two added.
 * Near ground that is only possibly steep the answer leans.
 */
final class RidgeRule implements Rule {
    private final boolean surveyed;
    private final Limit steepest;
    private final Limit steep;

    /** Ground steeper than a slope, certainly, as measured and possibly, and the distance that is kept from it. */
    private record Limit(double metres, SteepGround certain, SteepGround measured, SteepGround possible) {
        static Limit of(SpotGrid grid, double slope, double metres) {
            return new Limit(
                    metres,
                    new SteepGround(grid, spot -> spot.slope() - LeaningOutcome.ERRORS * spot.slopeError(), slope),
                    new SteepGround(grid, spot -> spot.slope(), slope),
                    new SteepGround(grid, spot -> spot.slope() + LeaningOutcome.ERRORS * spot.slopeError(), slope));
        }
    }

    RidgeRule(SpotGrid grid, RestsOn restsOn, DayConditions day, Policy policy) {
        double resistance = day.fastest().rollingResistance();
        this.surveyed = restsOn == RestsOn.SURVEY;
        this.steepest = Limit.of(
                grid, policy.get(SlopePolicy.RIDGE_FAIL_SHARE) * resistance, policy.get(SlopePolicy.RIDGE_FAIL_METRES));
        this.steep = Limit.of(
                grid,
                policy.get(SlopePolicy.RIDGE_CAUTION_SHARE) * resistance,
                EdgeRule.standardPaces(policy.get(SlopePolicy.RIDGE_CAUTION_PACES)));
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        boolean known = surveyed && judged.own().known();
        return Unit.METRES.result(RuleId.RIDGE, known ? at(judged) : RuleAnswer.notChecked());
    }

    private RuleAnswer at(JudgedPosition judged) {
        RuleAnswer fromSteepest = from(steepest, judged, Outcome.FAIL);
        return fromSteepest.said().outcome() == Outcome.PASS ? from(steep, judged, Outcome.CAUTION) : fromSteepest;
    }

    private static RuleAnswer from(Limit limit, JudgedPosition judged, Outcome near) {
        double possible = limit.possible.metresFrom(judged.own());
        if (Double.isInfinite(possible)) {
            return RuleAnswer.bare(LeaningOutcome.of(Outcome.PASS), "none");
        }
        double measured = limit.measured.metresFrom(judged.own());
        double certain = limit.certain.metresFrom(judged.own());
        LeaningOutcome said = LeaningOutcome.between(
                possible, measured, certain, metres -> metres < limit.metres ? near : Outcome.PASS);
        double error = (certain - possible) / (2 * LeaningOutcome.ERRORS);
        return RuleAnswer.of(said, measured, limit.metres, measured - limit.metres, error);
    }
}
