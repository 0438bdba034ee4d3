package org.cupwright.holelocation.judging;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;

/**
 * Which rules would have to be set aside at a spot that fails, of those that the course sets aside before the rest of
 * old holes: ground that a green has besides its good ground, for days on which that is used up.
 */
final class EasedSpots {
    private final Map<RuleId, Concession> easing = new EnumMap<>(RuleId.class);
    private final Concessions none;

    EasedSpots(Policy policy) {
        this.none = Concessions.of(List.of(), policy);
        List<Concession> ranking = policy.get(HoleLocationPolicy.CONCESSIONS);
        int rest = ranking.contains(Concession.OLD_HOLE) ? ranking.indexOf(Concession.OLD_HOLE) : ranking.size();
        for (Concession concession : ranking.subList(0, rest)) {
            if (concession.rule() != RuleId.OLD_HOLE) {
                easing.putIfAbsent(concession.rule(), concession);
            }
        }
    }

    /** Whether a rule may be set aside at all. */
    boolean mayEase(RuleId rule) {
        return easing.containsKey(rule);
    }

    /** The rules to be set aside; empty where one of those that fail may not be. */
    Optional<Set<RuleId>> setAside(List<RuleResult> results) {
        Set<RuleId> setAside = EnumSet.noneOf(RuleId.class);
        for (RuleResult result : results) {
            if (result.outcome() == Outcome.FAIL) {
                Concession concession = easing.get(result.rule());
                if (concession == null || !none.excuses(concession, result)) {
                    return Optional.empty();
                }
                setAside.add(result.rule());
            }
        }
        return Optional.of(setAside);
    }
}
