package org.cupwright.holelocation.rule;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.cupwright.holelocation.Outcome;

/**
 * An outcome, and where errors of measurement forbid a clear one, the likelier of pass and fail.
 *
 * @param outcome what the rule says
 * @param leans the likelier answer; only a caution has one
 */
record LeaningOutcome(Outcome outcome, Optional<Outcome> leans) {
    /** How many standard errors a value may be off either way: about 95 of 100 (our choice). */
    static final double ERRORS = 2;

    private static final Map<Outcome, LeaningOutcome> CLEAR =
            each(outcome -> new LeaningOutcome(outcome, Optional.empty()));

    private static final Map<Outcome, LeaningOutcome> LEANING =
            each(likelier -> new LeaningOutcome(Outcome.CAUTION, Optional.of(likelier)));

    private static Map<Outcome, LeaningOutcome> each(Function<Outcome, LeaningOutcome> made) {
        Map<Outcome, LeaningOutcome> all = new EnumMap<>(Outcome.class);
        for (Outcome outcome : Outcome.values()) {
            all.put(outcome, made.apply(outcome));
        }
        return all;
    }

    static LeaningOutcome of(Outcome outcome) {
        return CLEAR.get(outcome);
    }

    static LeaningOutcome leaning(Outcome likelier) {
        return LEANING.get(likelier);
    }

    /**
     * The outcome of a value that may lie anywhere between two bounds.
     *
     * <p>Where the outcome is the same all over, that; else a caution. It leans to the value's own outcome; where that
     * is a caution itself, to the clear answer within reach, and to the careful one if both are.
     */
    static LeaningOutcome between(double low, double value, double high, DoubleFunction<Outcome> outcomes) {
        Outcome below = outcomes.apply(low);
        Outcome own = outcomes.apply(value);
        Outcome above = outcomes.apply(high);
        if (below == own && own == above) {
            return of(own);
        }
        if (own != Outcome.CAUTION) {
            return leaning(own);
        }
        return leaning(below == Outcome.FAIL || above == Outcome.FAIL ? Outcome.FAIL : Outcome.PASS);
    }

    /**
     * From best to worst; what could not be checked is worse than good, and better than what somebody should look at.
     */
    int badness() {
        return switch (outcome) {
            case PASS -> 0;
            case NOT_CHECKED -> 1;
            case CAUTION -> 2;
            case FAIL -> 3;
        };
    }

    /** The last part of the sentence's key. */
    String word() {
        return switch (outcome) {
            case PASS -> "pass";
            case NOT_CHECKED -> "notChecked";
            case CAUTION -> leans.isPresent() ? "check" : "caution";
            case FAIL -> "fail";
        };
    }
}
