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

/** How far the position is from plugs that still show, m: on one it fails, near one it is a caution. */
final class PlugRule implements GroundRule {
    private final List<MapPoint> plugs;
    private final double onMetres;
    private final double nearMetres;

    PlugRule(GroundOnDay ground, Policy policy) {
        this.plugs = ground.counting(GroundItem.Kind.PLUG).stream()
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
        this.onMetres = policy.get(DistancePolicy.ON_PLUG_METRES);
        this.nearMetres = policy.get(DistancePolicy.PLUG_METRES);
    }

    @Override
    public RuleResult at(MapPoint position) {
        double metres = Distances.nearest(position, plugs);
        LeaningOutcome said = LeaningOutcome.of(Distances.outcome(metres, onMetres, nearMetres));
        double limit = said.outcome() == Outcome.FAIL ? onMetres : nearMetres;
        return Unit.METRES.result(
                RuleId.PLUG, plugs.isEmpty() ? RuleAnswer.bare(said, "none") : RuleAnswer.atLeast(said, metres, limit));
    }
}
