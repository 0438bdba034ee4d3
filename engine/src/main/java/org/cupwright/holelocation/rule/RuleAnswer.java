package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.Outcome;

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
    boolean isWorseThan(RuleAnswer other) {
        int badness = said.badness() - other.said.badness();
        return badness > 0 || (badness == 0 && Double.compare(margin, other.margin) < 0);
    }

    RuleAnswer saying(String otherWord) {
        return new RuleAnswer(said, otherWord, value, limit, margin, error);
    }
}
