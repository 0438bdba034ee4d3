package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/**
 * How far the position is from ground that is out of use (fails) or in light use (a caution, sentence {@code caution}),
 * m; nearer than the ground about a hole counts as in it.
 *
 * <p>Ground saved for an event is not closed: who plans keeps it, and the event uses it.
 */
final class ClosedGroundRule implements GroundRule {
    private final List<Geometry> outOfUse;
    private final List<Geometry> lightUse;
    private final double aboutMetres;

    ClosedGroundRule(GroundOnDay ground, Policy policy) {
        this.outOfUse = places(ground, GroundItem.Kind.OUT_OF_USE);
        this.lightUse = places(ground, GroundItem.Kind.LIGHT_USE);
        this.aboutMetres = policy.get(SlopePolicy.ABOUT_METRES);
    }

    private static List<Geometry> places(GroundOnDay ground, GroundItem.Kind kind) {
        return ground.counting(kind).stream().map(GroundItem::place).toList();
    }

    @Override
    public RuleResult at(MapPoint position) {
        return Unit.METRES.result(RuleId.CLOSED_GROUND, answer(position));
    }

    private RuleAnswer answer(MapPoint position) {
        double fromOutOfUse = nearest(position, outOfUse);
        double fromLightUse = nearest(position, lightUse);
        if (fromOutOfUse < aboutMetres) {
            return RuleAnswer.atLeast(LeaningOutcome.of(Outcome.FAIL), fromOutOfUse, aboutMetres);
        }
        if (fromLightUse < aboutMetres) {
            return RuleAnswer.atLeast(LeaningOutcome.of(Outcome.CAUTION), fromLightUse, aboutMetres);
        }
        double nearest = Math.min(fromOutOfUse, fromLightUse);
        return Double.isInfinite(nearest)
                ? RuleAnswer.bare(LeaningOutcome.of(Outcome.PASS), "none")
                : RuleAnswer.atLeast(LeaningOutcome.of(Outcome.PASS), nearest, aboutMetres);
    }

    private static double nearest(MapPoint from, List<Geometry> places) {
        if (places.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Point point = from.toPoint();
        return places.stream().mapToDouble(point::distance).min().orElseThrow();
    }
}
