package org.cupwright.rotation;

import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;

/** Values as arguments of a message, by their unit. */
final class Measures {
    private Measures() {}

    static Argument of(Term.Unit unit, double value) {
        return switch (unit) {
            case METRES -> new Length(value);
            case HOLES -> new Count(Math.round(value));
        };
    }

    /** A value in the unit of a rule's result. */
    static Argument of(RuleResult result, double value) {
        return switch (result.unit()) {
            case "m" -> new Length(value);
            case "mm" -> new Length(value / 1000);
            case "%" -> new Slope(value);
            case "points" -> new SlopePoints(value);
            default ->
                throw new IllegalArgumentException(
                        "rule " + result.rule().id() + " measures in " + result.unit() + ", not in m, mm, % or points");
        };
    }
}
