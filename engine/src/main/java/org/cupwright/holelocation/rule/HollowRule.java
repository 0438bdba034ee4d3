package org.cupwright.holelocation.rule;

import java.util.Optional;
import org.cupwright.green.Ground;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.spot.HollowDepths;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * How deep water would stand about the position when rain is expected, mm. On a dry day it passes (sentence {@code
 * dry}).
 *
 * <p>A depth is as uncertain as a difference of heights. Where the surface holds no water, errors may hide a hollow: at
 * most as deep as two standard errors of a height difference over a metre less what the ground falls in that metre, the
 * slope taken two of its own errors flatter (our choice). Where that decides nothing the rule answers with a caution.
 */
final class HollowRule implements Rule {
    private static final double NEIGHBOURS_METRES = 1;

    private final boolean surveyed;
    private final Optional<WorstAbout> depths;
    private final double heightError;
    private final double passMillimetres;
    private final double failMillimetres;

    HollowRule(Ground ground, SpotGrid grid, DayConditions day, Policy policy) {
        this.surveyed = ground.restsOn() == RestsOn.SURVEY;
        this.depths = day.rainExpected()
                ? ground.surface().map(surface -> about(grid, new HollowDepths(surface, grid)))
                : Optional.empty();
        this.heightError = 1000 * ground.heightStandardErrorMetres();
        this.passMillimetres = policy.get(SlopePolicy.HOLLOW_PASS_MILLIMETRES);
        this.failMillimetres = policy.get(SlopePolicy.HOLLOW_FAIL_MILLIMETRES);
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        if (!surveyed || !judged.own().known()) {
            return Unit.MILLIMETRES.result(RuleId.HOLLOW, RuleAnswer.notChecked());
        }
        return Unit.MILLIMETRES.result(
                RuleId.HOLLOW,
                depths.map(about -> about.of(judged))
                        .orElseGet(() -> RuleAnswer.bare(LeaningOutcome.of(Outcome.PASS), "dry")));
    }

    private WorstAbout about(SpotGrid grid, HollowDepths known) {
        return new WorstAbout(grid, spot -> at(spot, known));
    }

    private RuleAnswer at(SpotGround spot, HollowDepths known) {
        double depth = 1000 * known.metresAt(spot.at());
        double either = LeaningOutcome.ERRORS * heightError;
        double flattest = Math.max(0, spot.slope() - LeaningOutcome.ERRORS * spot.slopeError());
        double hidden = Math.max(0, either - 1000 * NEIGHBOURS_METRES * flattest);
        double deepest = depth > 0 ? depth + either : hidden;
        LeaningOutcome said = LeaningOutcome.between(Math.max(0, depth - either), depth, deepest, this::outcome);
        return RuleAnswer.atMost(said, depth, passMillimetres, heightError);
    }

    private Outcome outcome(double millimetres) {
        if (millimetres <= passMillimetres) {
            return Outcome.PASS;
        }
        return millimetres <= failMillimetres ? Outcome.CAUTION : Outcome.FAIL;
    }
}
