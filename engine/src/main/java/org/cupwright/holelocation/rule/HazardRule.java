package org.cupwright.holelocation.rule;

import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.LatticeDistances;
import org.cupwright.holelocation.spot.NearestBorder;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Geometry;

/** How far the position is from that part of the edge beyond which a bunker, water or a fall-off lies, m. */
final class HazardRule implements Rule {
    private final Optional<LatticeDistances> edge;
    private final double limitMetres;
    private final double cautionMetres;

    HazardRule(Hole hole, PuttingArea area, Policy policy) {
        double reach = EdgeRule.standardPaces(policy.get(DistancePolicy.HAZARD_REACH_PACES));
        Geometry near = area.edgeNear(hole.hazards(), reach);
        this.edge = near.isEmpty()
                ? Optional.empty()
                : Optional.of(new LatticeDistances(area.lattice(), NearestBorder.of(near)::metresFrom));
        this.limitMetres = EdgeRule.standardPaces(policy.get(DistancePolicy.HAZARD_PACES));
        this.cautionMetres = limitMetres + EdgeRule.standardPaces(policy.get(DistancePolicy.CAUTION_PACES));
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        return Unit.METRES.result(
                RuleId.HAZARD,
                edge.map(known -> at(judged, known))
                        .orElseGet(() -> RuleAnswer.bare(LeaningOutcome.of(Outcome.PASS), "none")));
    }

    private RuleAnswer at(JudgedPosition judged, LatticeDistances known) {
        double metres = known.from(judged.position());
        LeaningOutcome said = LeaningOutcome.of(Distances.outcome(metres, limitMetres, cautionMetres));
        return RuleAnswer.atLeast(said, metres, limitMetres);
    }
}
