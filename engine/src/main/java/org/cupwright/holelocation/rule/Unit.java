package org.cupwright.holelocation.rule;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message;

/** The unit a rule measures in: how it is written in a result, and what kind of argument of a sentence it is. */
enum Unit {
    PERCENT("%", Message.Slope::new),
    POINTS("points", Message.SlopePoints::new),
    METRES("m", Message.Length::new),
    MILLIMETRES("mm", millimetres -> new Message.Length(millimetres / 1000));

    /** Keys of sentences by rule and last part: a green asks for some ten thousand of each. */
    private static final Map<RuleId, Map<String, String>> KEYS = new EnumMap<>(RuleId.class);

    static {
        for (RuleId rule : RuleId.values()) {
            KEYS.put(rule, new ConcurrentHashMap<>());
        }
    }

    private final String symbol;
    private final DoubleFunction<Message.Argument> argument;

    Unit(String symbol, DoubleFunction<Message.Argument> argument) {
        this.symbol = symbol;
        this.argument = argument;
    }

    /** An answer of a rule as its result. */
    RuleResult result(RuleId rule, RuleAnswer answer) {
        return new RuleResult(
                rule,
                ifKnown(answer.value()),
                symbol,
                ifKnown(answer.limit()),
                ifKnown(answer.margin()),
                ifKnown(answer.error()),
                answer.said().outcome(),
                answer.said().leans(),
                new Message(key(rule, answer.word()), arguments(answer.value(), answer.limit())));
    }

    private List<Message.Argument> arguments(double value, double limit) {
        if (!Double.isFinite(value)) {
            return Double.isFinite(limit) ? List.of(argument.apply(limit)) : List.of();
        }
        return Double.isFinite(limit)
                ? List.of(argument.apply(value), argument.apply(limit))
                : List.of(argument.apply(value));
    }

    private static String key(RuleId rule, String word) {
        return KEYS.get(rule).computeIfAbsent(word, last -> "rule." + rule.id() + "." + last);
    }

    private static OptionalDouble ifKnown(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
