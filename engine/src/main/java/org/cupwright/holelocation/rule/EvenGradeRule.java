package org.cupwright.holelocation.rule;

import org.cupwright.green.BendFit;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Whether the slope is the same all over the disc, in points of change over its diameter.
 *
 * <p>It fails where the change is above the limit even with two errors taken off, passes where it is not with two errors added, and
 * leans in between. Where the slope is marginal the change over the wide disc counts too, as a caution (sentence {@code wide}).
 * A change known worse than the policy's error is not checked, and the sentence {@code uncertain} says so.
 */
final class EvenGradeRule implements Rule {
    private final double limitPoints;
    private final double greatestErrorPoints;

    EvenGradeRule(Policy policy) {
        this.limitPoints = policy.get(SlopePolicy.EVEN_GRADE_POINTS);
        this.greatestErrorPoints = policy.get(SlopePolicy.EVEN_GRADE_ERROR_POINTS);
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        return Unit.POINTS.result(RuleId.EVEN_GRADE, Finding.worst(judged, this::at));
    }

    private Finding at(SpotGround spot) {
        Finding near = spot.bend().map(this::of).orElseGet(Finding::notChecked);
        if (near.grade().outcome() != Outcome.PASS || spot.wideBend().isEmpty()) {
            return near;
        }
        Finding wide = of(spot.wideBend().get());
        return switch (wide.grade().outcome()) {
            case PASS, NOT_CHECKED -> near;
            case CAUTION -> wide.saying("wideCheck");
            case FAIL ->
                Finding.atMost(Grade.of(Outcome.CAUTION), wide.value(), limitPoints, wide.error())
                        .saying("wide");
        };
    }

    private Finding of(BendFit.Change change) {
        double error = change.standardErrorPoints();
        if (!(error <= greatestErrorPoints)) {
            return Finding.atMost(Grade.of(Outcome.NOT_CHECKED), Double.NaN, Double.NaN, error)
                    .saying("uncertain");
        }
        double points = Math.abs(change.points());
        double either = Grade.ERRORS * error;
        Grade grade = Grade.between(
                points - either, points, points + either, p -> p > limitPoints ? Outcome.FAIL : Outcome.PASS);
        return Finding.atMost(grade, points, limitPoints, error);
    }
}
