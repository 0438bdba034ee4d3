package org.cupwright.holelocation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.RestsOn;

/**
 * All that was found at one position.
 *
 * @param position where
 * @param verdict the worst outcome among the rules that were checked and not set aside
 * @param restsOn what the knowledge of the ground rests on here
 * @param rules one result for each of the eleven rules, in the order of {@link RuleId}
 * @param setAside rules set aside that day on that green; they keep their outcome in {@code rules}
 * @param difficulty how hard it plays
 * @param word what people say of it, if they say anything; never part of what was measured
 */
public record Judgement(
        MapPoint position,
        Verdict verdict,
        RestsOn restsOn,
        List<RuleResult> rules,
        Set<RuleId> setAside,
        Difficulty difficulty,
        Optional<PersonsOpinion> word) {
    public Judgement {
        rules = List.copyOf(rules);
        setAside = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(setAside));
    }

    /** Whether the slope was measured here, or a person speaks for the spot: there is something to go by. */
    public boolean vouchedFor() {
        return restsOn != RestsOn.OUTLINE
                || word.map(PersonsOpinion::kind)
                        .filter(PersonsOpinion.Kind::speaksForAHole)
                        .isPresent();
    }

    /** What one rule found; every judgement holds a result of each. */
    public RuleResult rule(RuleId id) {
        return rules.stream()
                .filter(result -> result.rule() == id)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the judgement at " + position + " lacks " + id.id()));
    }

    /**
     * The rule by which the position is no better: of those that count, the first whose outcome is the verdict. Empty
     * where nothing stands against it, and in a gap of the survey.
     */
    public Optional<RuleId> deciding() {
        return deciding(verdict, rules, setAside);
    }

    public static Optional<RuleId> deciding(Verdict verdict, List<RuleResult> rules, Set<RuleId> setAside) {
        Outcome worst = switch (verdict) {
            case FAIL -> Outcome.FAIL;
            case CAUTION -> Outcome.CAUTION;
            case PASS, NOT_SURVEYED -> Outcome.PASS;
        };
        for (RuleResult result : rules) {
            if (worst != Outcome.PASS && result.outcome() == worst && !setAside.contains(result.rule())) {
                return Optional.of(result.rule());
            }
        }
        return Optional.empty();
    }
}
