package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;

/** How far the position is from the green's edge, m; negative off the green and on a false front. */
final class EdgeRule implements Rule {
    private final PuttingArea area;
    private final double limitMetres;
    private final double cautionMetres;

    EdgeRule(PuttingArea area, Policy policy) {
        this.area = area;
        this.limitMetres = standardPaces(policy.get(DistancePolicy.EDGE_PACES));
        this.cautionMetres = limitMetres + standardPaces(policy.get(DistancePolicy.CAUTION_PACES));
    }

    /** Limits are in paces of the standard length, whoever paces them. */
    static double standardPaces(double paces) {
        return Paces.toMetres(paces, Paces.STANDARD_METRES);
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        double metres = area.edgeMetres(judged.position());
        LeaningOutcome said = LeaningOutcome.of(Distances.outcome(metres, limitMetres, cautionMetres));
        return Unit.METRES.result(RuleId.EDGE, RuleAnswer.atLeast(said, metres, limitMetres));
    }
}
