package org.cupwright.holelocation.judging;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;

/** Concessions in force on a green, and what they do to a position's results. */
final class Concessions {
    private final Set<Concession> inForce;
    private final double leastEdgeMetres;
    private final double closerMetres;

    private Concessions(Set<Concession> inForce, Policy policy) {
        this.inForce = inForce;
        this.leastEdgeMetres = Paces.toMetres(policy.get(DistancePolicy.EDGE_LEAST_PACES), Paces.STANDARD_METRES);
        this.closerMetres = policy.get(DistancePolicy.OLD_HOLE_CLOSER_METRES);
    }

    static Concessions of(List<Concession> inForce, Policy policy) {
        Set<Concession> set = EnumSet.noneOf(Concession.class);
        set.addAll(inForce);
        return new Concessions(set, policy);
    }

    /** Whether a concession would excuse a rule's failure. */
    boolean excuses(Concession concession, RuleResult failure) {
        return concession.rule() == failure.rule()
                && switch (concession) {
                    case EDGE -> failure.value().orElse(0) >= leastEdgeMetres;
                    case OLD_HOLE_CLOSER -> failure.value().orElse(0) >= closerMetres;
                    default -> true;
                };
    }

    /**
     * The rules set aside at a position: whole rules always, rules conceded in part where that excuses their failure.
     */
    Set<RuleId> setAside(List<RuleResult> results) {
        if (inForce.isEmpty()) {
            return Set.of();
        }
        Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
        for (Concession concession : inForce) {
            for (RuleResult result : results) {
                boolean counts = !concession.inPart() || result.outcome() == Outcome.FAIL;
                if (counts && excuses(concession, result)) {
                    rules.add(result.rule());
                }
            }
        }
        return rules;
    }

    /**
     * The worst outcome among the rules that were checked and are not set aside; nothing better is said in a survey's
     * gap.
     */
    static Verdict verdict(List<RuleResult> results, Set<RuleId> setAside, boolean inGap) {
        Verdict worst = Verdict.PASS;
        for (RuleResult result : results) {
            if (!setAside.contains(result.rule()) && result.outcome() == Outcome.FAIL) {
                return Verdict.FAIL;
            }
            if (!setAside.contains(result.rule()) && result.outcome() == Outcome.CAUTION) {
                worst = Verdict.CAUTION;
            }
        }
        return inGap ? Verdict.NOT_SURVEYED : worst;
    }
}
