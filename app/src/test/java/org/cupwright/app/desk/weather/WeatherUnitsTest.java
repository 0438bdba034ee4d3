package org.cupwright.app.desk.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Table;
import org.cupwright.formats.table.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every unit of every column of tables of weather by a row worked by hand; a unit without one fails. */
class WeatherUnitsTest {
    /** One cell and what is kept of it. */
    private record Row(String column, String unit, String cell, double kept) {}

    private static final List<Row> ROWS = List.of(
            new Row("tmax", "C", "21.5", 21.5),
            new Row("tmax", "F", "68", 20), // 36 degrees above freezing, five ninths of them
            new Row("tmin", "C", "-3.5", -3.5),
            new Row("tmin", "F", "14", -10), // 18 degrees below freezing
            new Row("rain", "mm", "12.4", 12.4),
            new Row("rain", "in", "0.5", 12.7), // half of 25.4 mm
            new Row("wind", "m/s", "4.5", 4.5),
            new Row("wind", "km/h", "36", 10), // 36,000 m in 3,600 s
            new Row("wind", "mph", "10", 4.47), // 16,093.44 m in 3,600 s are 4.4704 m/s
            new Row("rhmax", "%", "95", 95),
            new Row("rhmin", "%", "40", 40),
            new Row("sunshine", "min", "150", 150),
            new Row("sunshine", "h", "2.5", 150),
            new Row("radiation", "MJ/m2", "14.25", 14.25),
            new Row("radiation", "W/m2", "100", 8.64), // for 86,400 s
            new Row("radiation", "Ly", "500", 20.93), // 500 · 4.1868 J on each of 10,000 cm²
            new Row("radiation", "kWh/m2", "4", 14.4), // 3.6 MJ each
            new Row("dewpoint", "C", "9.5", 9.5),
            new Row("dewpoint", "F", "50", 10), // 18 degrees above freezing
            new Row("vapourpressure", "kPa", "1.228", 10), // air saturated at 10 °C: FAO-56, table 2.3 (recalled)
            new Row("vapourpressure", "hPa", "12.28", 10));

    private static final Map<String, ToDoubleFunction<WeatherEntered>> KEPT = Map.of(
            "tmax", WeatherEntered::highestCelsius,
            "tmin", WeatherEntered::lowestCelsius,
            "rain", day -> day.rainMillimetres().orElseThrow(),
            "wind", day -> day.windMetresPerSecond().orElseThrow(),
            "rhmax", day -> day.highestHumidityPercent().orElseThrow(),
            "rhmin", day -> day.lowestHumidityPercent().orElseThrow(),
            "sunshine", day -> day.sunshineMinutes().orElseThrow(),
            "radiation", day -> day.radiationMegajoules().orElseThrow(),
            "dewpoint", day -> day.dewPointCelsius().orElseThrow(),
            "vapourpressure", day -> day.dewPointCelsius().orElseThrow());

    static Stream<Row> rows() {
        return ROWS.stream();
    }

    @Test
    void everyUnitThatIsDeclaredHasARow() {
        Stream<String> declared = WeatherColumn.ALL.stream()
                .flatMap(column -> column.units().stream().map(unit -> column.name() + " " + unit.name()));
        assertThat(ROWS.stream().map(row -> row.column() + " " + row.unit()))
                .containsExactlyInAnyOrderElementsOf(declared.toList());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isKeptInTheLogbooksUnit(Row row) throws IOException {
        assertThat(KEPT.get(row.column()).applyAsDouble(read(row, row.column(), true)))
                .isEqualTo(row.kept());
        assertThat(KEPT.get(row.column()).applyAsDouble(read(row, row.column() + " (" + row.unit() + ")", false)))
                .as("its unit beside its name")
                .isEqualTo(row.kept());
    }

    /** In a table that has what every table needs; the unit is said or stands in the first line. */
    private static WeatherEntered read(Row row, String name, boolean said) throws IOException {
        String tmax = row.column().equals("tmax") ? "" : ",tmax";
        String tmin = row.column().equals("tmin") ? "" : ",tmin";
        String text = "date" + tmax + tmin + "," + name + "\n2026-05-01" + (tmax.isEmpty() ? "" : ",30")
                + (tmin.isEmpty() ? "" : ",1") + "," + row.cell() + "\n";
        Table table = Table.of(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        Layout layout = Layout.of(table, WeatherColumn.ALL, Map.of());
        if (said) {
            WeatherColumn.ALL.stream()
                    .filter(column -> column.name().equals(row.column()))
                    .forEach(
                            column -> layout.set(column, column.unit(row.unit()).orElseThrow()));
        }
        List<WeatherEntered> days =
                table.read(line -> WeatherLine.read(layout.row(line))).values();
        assertThat(days).hasSize(1);
        return days.get(0);
    }

    @Test
    void theFirstUnitIsTheLogbooksOwn() {
        assertThat(WeatherColumn.ALL.stream()
                        .filter(column -> !column.units().isEmpty())
                        .map(column -> column.units().get(0)))
                .allMatch(unit -> unit.equals(new Unit(unit.name(), 0, 1)));
    }
}
