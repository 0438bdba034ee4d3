package org.cupwright.holelocation.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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

    private final String symbol;
    private final DoubleFunction<Message.Argument> argument;

    Unit(String symbol, DoubleFunction<Message.Argument> argument) {
        this.symbol = symbol;
        this.argument = argument;
    }

    /** An answer of a rule as its result. */
    RuleResult result(RuleId rule, RuleAnswer answer) {
        List<Message.Argument> arguments = new ArrayList<>();
        for (double number : new double[] {answer.value(), answer.limit()}) {
            if (Double.isFinite(number)) {
                arguments.add(argument.apply(number));
            }
        }
        return new RuleResult(
                rule,
                ifKnown(answer.value()),
                symbol,
                ifKnown(answer.limit()),
                ifKnown(answer.margin()),
                ifKnown(answer.error()),
                answer.said().outcome(),
                answer.said().leans(),
                new Message("rule." + rule.id() + "." + answer.word(), arguments));
    }

    private static OptionalDouble ifKnown(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
