package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;

/**
 * How far the position is from old holes, m: it fails near those whose ground still rests, and is a caution near the
 * last few of the past weeks, resting or not (sentence {@code caution}).
 */
final class OldHoleRule implements GroundRule {
    private final List<MapPoint> resting;
    private final List<MapPoint> last;
    private final double restMetres;
    private final double lastMetres;

    OldHoleRule(GroundOnDay ground, Policy policy) {
        this.resting = ground.counting(GroundItem.Kind.OLD_HOLE).stream()
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
        this.last = ground.lastHoles(policy.get(DistancePolicy.LAST_HOLES), policy.get(DistancePolicy.LAST_HOLES_DAYS));
        this.restMetres = policy.get(DistancePolicy.OLD_HOLE_METRES);
        this.lastMetres = policy.get(DistancePolicy.LAST_HOLES_METRES);
    }

    @Override
    public RuleResult at(MapPoint position) {
        return Unit.METRES.result(RuleId.OLD_HOLE, answer(position));
    }

    private RuleAnswer answer(MapPoint position) {
        double fromResting = Distances.nearest(position, resting);
        double fromLast = Distances.nearest(position, last);
        if (fromResting < restMetres) {
            return RuleAnswer.atLeast(LeaningOutcome.of(Outcome.FAIL), fromResting, restMetres);
        }
        if (fromLast < lastMetres) {
            return RuleAnswer.atLeast(LeaningOutcome.of(Outcome.CAUTION), fromLast, lastMetres);
        }
        double nearest = Math.min(fromResting, fromLast);
        if (Double.isInfinite(nearest)) {
            return RuleAnswer.bare(LeaningOutcome.of(Outcome.PASS), "none");
        }
        return RuleAnswer.atLeast(
                LeaningOutcome.of(Outcome.PASS), nearest, fromLast == nearest ? lastMetres : restMetres);
    }
}
