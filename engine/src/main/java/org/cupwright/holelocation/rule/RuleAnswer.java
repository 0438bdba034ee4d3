package org.cupwright.holelocation.rule;

import java.util.function.Function;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.spot.SpotGround;

/**
 * What a rule measured at one spot: numbers in the rule's unit, NaN where there is none.
 *
 * @param said the outcome, and which way it leans
 * @param word last part of the sentence's key
 * @param value what was measured
 * @param limit what it was held against
 * @param margin how far it is on the good side
 * @param error standard error of the value
 */
record RuleAnswer(LeaningOutcome said, String word, double value, double limit, double margin, double error) {
    static RuleAnswer of(LeaningOutcome said, double value, double limit, double margin, double error) {
        return new RuleAnswer(said, said.word(), value, limit, margin, error);
    }

    /** Less is better. */
    static RuleAnswer atMost(LeaningOutcome said, double value, double limit, double error) {
        return of(said, value, limit, limit - value, error);
    }

    /** More is better. */
    static RuleAnswer atLeast(LeaningOutcome said, double value, double limit) {
        return of(said, value, limit, value - limit, Double.NaN);
    }

    /** An outcome without a number. */
    static RuleAnswer bare(LeaningOutcome said, String word) {
        return new RuleAnswer(said, word, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    static RuleAnswer notChecked() {
        return bare(LeaningOutcome.of(Outcome.NOT_CHECKED), "notChecked");
    }

    /** By the outcome first, then by the margin. */
    private boolean isWorseThan(RuleAnswer other) {
        int badness = said.badness() - other.said.badness();
        return badness > 0 || (badness == 0 && Double.compare(margin, other.margin) < 0);
    }

    RuleAnswer saying(String otherWord) {
        return new RuleAnswer(said, otherWord, value, limit, margin, error);
    }

    /**
     * The worst of the ground about a position: the worst outcome, and of several such the one with the least margin.
     *
     * <p>The position itself must be known, or nothing is said. Spots that nobody measured are passed over: a level's
     * reading speaks for the ground about it. A gap in a survey is no such spot: beside one, what passes is a caution.
     */
    static RuleAnswer worst(JudgedPosition judged, Function<SpotGround, RuleAnswer> rule) {
        if (!judged.own().known()) {
            return notChecked();
        }
        RuleAnswer worst = rule.apply(judged.own());
        for (SpotGround spot : judged.about()) {
            if (spot.known()) {
                RuleAnswer next = rule.apply(spot);
                worst = next.isWorseThan(worst) ? next : worst;
            }
        }
        if (worst.said.outcome() == Outcome.PASS && judged.besideGap()) {
            return new RuleAnswer(
                    LeaningOutcome.of(Outcome.CAUTION), "gap", worst.value, worst.limit, worst.margin, worst.error);
        }
        return worst;
    }
}
