package org.cupwright.holelocation;

import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.message.Message;

/**
 * What one rule found at one position.
 *
 * @param rule the rule
 * @param value what was measured, in {@code unit}; empty where nothing could be
 * @param unit unit of value, limit, margin and standard error: {@code "%"}, {@code "points"}, {@code "m"}, {@code "mm"}
 * @param limit the limit it was held against; empty where the rule has none here
 * @param margin how far the value is on the good side of the limit; negative on the bad side
 * @param standardError standard error of the value; empty where it has none worth naming
 * @param outcome what the rule says
 * @param leans where errors of measurement forbid a clear answer: the outcome that is likelier
 * @param says the finding as a sentence
 */
public record RuleResult(
        RuleId rule,
        OptionalDouble value,
        String unit,
        OptionalDouble limit,
        OptionalDouble margin,
        OptionalDouble standardError,
        Outcome outcome,
        Optional<Outcome> leans,
        Message says) {
    public RuleResult {
        if (leans.isPresent() && (outcome != Outcome.CAUTION || leans.get() == Outcome.NOT_CHECKED)) {
            throw new IllegalArgumentException("only a caution leans, and only to an answer");
        }
    }
}
