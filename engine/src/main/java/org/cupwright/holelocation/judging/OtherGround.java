package org.cupwright.holelocation.judging;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.rule.GroundRule;
import org.cupwright.policy.Policy;

/**
 * Spots that were judged already, on other ground: the rules of what lies on the green are asked anew, all else stays
 * as it was judged. Microseconds a spot, where judging a whole green takes tens of milliseconds.
 *
 * <p>Nothing is conceded for the new ground, and how hard a spot plays stays as it was among the ground it was judged
 * with. Immutable.
 */
public final class OtherGround {
    private final List<GroundRule> rules;

    public OtherGround(GroundOnDay ground, Policy policy) {
        this.rules = GroundRule.all(ground, policy);
    }

    /** The spot on this ground. */
    public Judgement of(Judgement judged) {
        return of(judged, judged.setAside());
    }

    /** The same, with the rule about old holes set aside where the spot breaks it. */
    public Judgement setAside(Judgement judged) {
        boolean broken = rules.stream()
                .map(rule -> rule.at(judged.position()))
                .anyMatch(result -> result.rule() == RuleId.OLD_HOLE && result.outcome() == Outcome.FAIL);
        if (!broken) {
            return of(judged);
        }
        Set<RuleId> setAside = EnumSet.of(RuleId.OLD_HOLE);
        setAside.addAll(judged.setAside());
        return of(judged, setAside);
    }

    private Judgement of(Judgement judged, Set<RuleId> setAside) {
        List<RuleResult> results = new ArrayList<>(judged.rules());
        for (GroundRule rule : rules) {
            RuleResult result = rule.at(judged.position());
            results.set(result.rule().ordinal(), result);
        }
        boolean inGap = judged.verdict() == Verdict.NOT_SURVEYED;
        return new Judgement(
                judged.position(),
                Concessions.verdict(results, setAside, inGap),
                judged.restsOn(),
                results,
                setAside,
                judged.difficulty(),
                judged.word());
    }
}
