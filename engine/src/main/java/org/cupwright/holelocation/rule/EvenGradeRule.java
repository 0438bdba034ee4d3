package org.cupwright.holelocation.rule;

import org.cupwright.green.BendFit;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Whether the slope is the same all over the disc, in points of change over its diameter.
 *
 * <p>It fails where the change is above the limit even with two errors taken off, passes where it is not with two
 * errors added, and leans in between. Where the slope is marginal the change over the wide disc counts too, as a
 * caution (sentence {@code wide}). A change known worse than the policy's error is not checked, and the sentence {@code
 * uncertain} says so.
 */
final class EvenGradeRule implements Rule {
    private final WorstAbout about;
    private final double limitPoints;
    private final double greatestErrorPoints;

    EvenGradeRule(SpotGrid grid, Policy policy) {
        this.about = new WorstAbout(grid, this::at);
        this.limitPoints = policy.get(SlopePolicy.EVEN_GRADE_POINTS);
        this.greatestErrorPoints = policy.get(SlopePolicy.EVEN_GRADE_ERROR_POINTS);
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        return Unit.POINTS.result(RuleId.EVEN_GRADE, about.of(judged));
    }

    private RuleAnswer at(SpotGround spot) {
        RuleAnswer near = spot.bend().map(this::of).orElseGet(RuleAnswer::notChecked);
        if (near.said().outcome() != Outcome.PASS || spot.wideBend().isEmpty()) {
            return near;
        }
        RuleAnswer wide = of(spot.wideBend().get());
        return switch (wide.said().outcome()) {
            case PASS, NOT_CHECKED -> near;
            case CAUTION -> wide.saying("wideCheck");
            case FAIL ->
                RuleAnswer.atMost(LeaningOutcome.of(Outcome.CAUTION), wide.value(), limitPoints, wide.error())
                        .saying("wide");
        };
    }

    private RuleAnswer of(BendFit.Change change) {
        double error = change.standardErrorPoints();
        if (!(error <= greatestErrorPoints)) {
            return RuleAnswer.atMost(LeaningOutcome.of(Outcome.NOT_CHECKED), Double.NaN, Double.NaN, error)
                    .saying("uncertain");
        }
        double points = Math.abs(change.points());
        double either = LeaningOutcome.ERRORS * error;
        LeaningOutcome said = LeaningOutcome.between(
                points - either, points, points + either, p -> p > limitPoints ? Outcome.FAIL : Outcome.PASS);
        return RuleAnswer.atMost(said, points, limitPoints, error);
    }
}
