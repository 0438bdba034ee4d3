package org.cupwright.app.desk.entry.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every unit in which any part of any entry may be typed, or stand in a table of entries, by a row worked by hand.
 * Which there are is told by what the program offers when it refuses one; a unit without a row fails.
 */
class PartUnitsTest {
    /** The end of a part's name, what is typed, and what is kept in the unit of the name. */
    private record Row(String end, String unit, String typed, double kept) {}

    private static final List<Row> ROWS = List.of(
            new Row("Celsius", "°c", "18.5 °C", 18.5),
            new Row("Celsius", "c", "18.5C", 18.5),
            new Row("Celsius", "°f", "14 °F", -10), // 18 degrees below freezing, five ninths of them
            new Row("Celsius", "f", "212F", 100),
            new Row("Millimetres", "mm", "203 mm", 203),
            new Row("Millimetres", "cm", "20.3 cm", 203),
            new Row("Millimetres", "in", "8 in", 203.2),
            new Row("Millimetres", "inch", "1 inch", 25.4),
            new Row("Millimetres", "inches", "4 inches", 101.6),
            new Row("Millimetres", "\"", "1/8\"", 3.175),
            new Row("MetresPerSecond", "m/s", "4.5 m/s", 4.5),
            new Row("MetresPerSecond", "km/h", "36 km/h", 10), // 36,000 m in 3,600 s
            new Row("MetresPerSecond", "mph", "10 mph", 4.4704), // 16,093.44 m in 3,600 s
            new Row("MetresPerSecond", "kn", "18 kn", 9.26), // 18 sea miles of 1,852 m in 3,600 s
            new Row("Feet", "ft", "10.5 ft", 10.5),
            new Row("Feet", "feet", "10.5 feet", 10.5),
            new Row("Feet", "'", "10.5'", 10.5),
            new Row("Feet", "m", "3.048 m", 10),
            new Row("Percent", "%", "80 %", 80));

    /** What a name ends with that has no other unit than its own: it must be none of the above. */
    private static final List<String> WITHOUT = List.of("Metres", "Megajoules");

    static Stream<Row> rows() {
        return ROWS.stream();
    }

    private static List<Part> numbers() {
        return EntryForm.all().stream()
                .flatMap(form -> form.parts().stream())
                .filter(part -> part.type() == double.class)
                .toList();
    }

    private static boolean ends(Part part, String end) {
        return part.name().toLowerCase(Locale.ROOT).endsWith(end.toLowerCase(Locale.ROOT));
    }

    private static TreeSet<String> offered(Part part) {
        Problem refused = catchThrowableOfType(Problem.class, () -> PartText.number(part.name(), "1 furlong", false));
        TreeSet<String> units = new TreeSet<>();
        if (refused.tryThis().key().equals("try.log.unit")) {
            String named = ((Name) refused.tryThis().arguments().get(0)).text();
            units.addAll(List.of(named.split(", ", -1)));
        }
        return units;
    }

    @Test
    void everyUnitOfEveryPartHasARow() {
        assertThat(numbers()).hasSizeGreaterThan(10);
        for (Part part : numbers()) {
            TreeSet<String> rows = new TreeSet<>();
            ROWS.stream().filter(row -> ends(part, row.end())).map(Row::unit).forEach(rows::add);
            assertThat(rows.isEmpty() && WITHOUT.stream().noneMatch(end -> ends(part, end)))
                    .as("%s names no unit that has a row", part.name())
                    .isFalse();
            assertThat(offered(part)).as(part.name()).isEqualTo(rows);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isKeptInTheUnitOfTheName(Row row) {
        List<Part> parts =
                numbers().stream().filter(part -> ends(part, row.end())).toList();
        assertThat(parts).isNotEmpty();
        for (Part part : parts) {
            assertThat(PartText.number(part.name(), row.typed(), false))
                    .as(part.name())
                    .isCloseTo(row.kept(), Offset.offset(1e-9));
        }
    }
}
