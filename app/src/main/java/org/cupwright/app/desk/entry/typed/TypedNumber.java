package org.cupwright.app.desk.entry.typed;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.StopForCup;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/**
 * A number of a part as a person types it, perhaps with its unit: {@code 68°F}, {@code 12 km/h}, {@code 1 1/2 in}. The
 * part's name ends with the unit in which it is kept; without one it is taken to be in that. Fractions are of inches,
 * and need to say so.
 */
final class TypedNumber {
    private static final String PLAIN = "(?<plain>[+-]?[0-9]{1,9}(?:[.,][0-9]{1,330})?)?";
    private static final String FRACTION = "(?<fraction>(?:(?<=[0-9])[ -]|^)[0-9]{1,3}/[1-9][0-9]{0,2})?";
    private static final Pattern FORM = Pattern.compile(PLAIN + FRACTION + " *(?<unit>[^0-9/.,+ -].*)?");

    private static final DoubleUnaryOperator AS_IT_IS = value -> value;
    private static final DoubleUnaryOperator INCHES = value -> value * StopForCup.MILLIMETRES_PER_INCH;

    /** By the end of a part's name: what else it may be typed in, and how that becomes its own. */
    private static final Map<String, Map<String, DoubleUnaryOperator>> UNITS = Map.of(
            "Celsius", Map.of("°c", AS_IT_IS, "c", AS_IT_IS, "°f", TypedNumber::celsius, "f", TypedNumber::celsius),
            "Millimetres",
                    Map.of(
                            "mm", AS_IT_IS,
                            "cm", value -> 10 * value,
                            "in", INCHES,
                            "inch", INCHES,
                            "inches", INCHES,
                            "\"", INCHES),
            "MetresPerSecond",
                    Map.of(
                            "m/s", AS_IT_IS,
                            "km/h", value -> value / 3.6,
                            "mph", value -> value * 0.44704,
                            "kn", value -> value * 1852 / 3600),
            "Feet", Map.of("ft", AS_IT_IS, "feet", AS_IT_IS, "'", AS_IT_IS, "m", value -> value / 0.3048),
            "Percent", Map.of("%", AS_IT_IS));

    private TypedNumber() {}

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }

    static double read(String part, String text) {
        Map<String, DoubleUnaryOperator> units = units(part);
        Matcher form = FORM.matcher(text.strip());
        OptionalDouble number = form.matches() ? number(form) : OptionalDouble.empty();
        if (number.isEmpty()) {
            throw LogProblems.value(part, text, Message.of("try.log.number"));
        }
        if (form.group("unit") == null) {
            if (form.group("fraction") != null) {
                throw LogProblems.value(part, text, Message.of("try.log.fraction"));
            }
            return number.getAsDouble();
        }
        DoubleUnaryOperator unit = units.get(form.group("unit").toLowerCase(Locale.ROOT));
        if (unit == null) {
            throw LogProblems.value(part, text, unknown(units));
        }
        if (form.group("fraction") != null && unit != INCHES) {
            throw LogProblems.value(part, text, Message.of("try.log.fraction"));
        }
        return unit.applyAsDouble(number.getAsDouble());
    }

    private static Message unknown(Map<String, DoubleUnaryOperator> units) {
        return units.isEmpty()
                ? Message.of("try.log.number")
                : Message.of(
                        "try.log.unit",
                        new Name(String.join(
                                ", ", units.keySet().stream().sorted().toList())));
    }

    private static Map<String, DoubleUnaryOperator> units(String part) {
        return UNITS.entrySet().stream()
                .filter(unit ->
                        part.toLowerCase(Locale.ROOT).endsWith(unit.getKey().toLowerCase(Locale.ROOT)))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Map.of());
    }

    private static OptionalDouble number(Matcher form) {
        String plain = form.group("plain");
        String fraction = form.group("fraction");
        if (plain == null && fraction == null) {
            return OptionalDouble.empty();
        }
        double whole = plain == null ? 0 : Double.parseDouble(plain.replace(',', '.'));
        if (fraction == null) {
            return OptionalDouble.of(whole);
        }
        if (plain != null && !plain.matches("[0-9]+")) {
            return OptionalDouble.empty();
        }
        String[] parts = fraction.strip().replaceFirst("^-", "").split("/", -1);
        return OptionalDouble.of(whole + Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]));
    }
}
