package org.cupwright.app.desk.weather;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.FarDays;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Question;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.formats.table.Unit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A table of weather, one line a day, as far as it reads.
 *
 * @param days in their order, each but once
 */
record WeatherTable(List<WeatherEntered> days, Layout layout, Reading<WeatherEntered> reading) {
    /** @throws Problem when a column that is needed is not there, or what was said of one fits nothing */
    static WeatherTable read(InputStream in, ImportWeather.Request request, WeatherEntries entries) throws IOException {
        Table table = Table.of(in);
        Layout layout = layout(table, request);
        Set<LocalDate> taken = new HashSet<>();
        Reading<WeatherEntered> reading = table.read(line -> {
            WeatherEntered weather = WeatherLine.read(layout.row(line));
            entries.check(weather.day());
            if (!taken.add(weather.day())) {
                throw WeatherColumn.not("twice", weather.day().toString());
            }
            return weather;
        });
        if (!request.accepted().contains(FarDays.ABOUT)) {
            reading.withoutFarDays(WeatherEntered::day);
        }
        List<WeatherEntered> days = reading.values().stream()
                .sorted(Comparator.comparing(WeatherEntered::day))
                .toList();
        return new WeatherTable(days, layout, reading);
    }

    private static Layout layout(Table table, ImportWeather.Request said) {
        Layout layout = Layout.of(table, WeatherColumn.ALL, said.columns());
        said.columns().forEach((typed, name) -> require(layout.has(column(typed)), name, table));
        said.units().forEach((typed, name) -> set(layout, column(typed), typed, name));
        List<String> missing = layout.missing();
        require(missing.isEmpty(), String.join(", ", missing), table);
        return layout;
    }

    private static void require(boolean there, String name, Table table) {
        if (!there) {
            throw problem("columnMissing", name, Excerpt.of(table.header().text()));
        }
    }

    private static void set(Layout layout, Column<?> column, String typed, String name) {
        if (!layout.has(column) || column.units().isEmpty()) {
            throw problem("unitOfNothing", typed, name);
        }
        String choices = column.units().stream().map(Unit::name).collect(Collectors.joining(", "));
        layout.set(column, column.unit(name).orElseThrow(() -> problem("unit", choices, name)));
    }

    private static Column<?> column(String typed) {
        String names = WeatherColumn.ALL.stream().map(Column::name).collect(Collectors.joining(", "));
        return WeatherColumn.ALL.stream()
                .filter(column -> column.name().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> problem("column", names, typed));
    }

    private static Problem problem(String kind, String named, String value) {
        return Problem.of(
                Message.of("problem.weather." + kind, new Name(named)),
                Message.of("where.weather"),
                value,
                Message.of("try.weather." + kind, new Name(named)));
    }

    /** What looks wrong of it. */
    List<Question> questions(double latitudeDegrees) {
        List<Question> columns = layout.questions(reading);
        boolean hottestIsRight =
                columns.stream().noneMatch(question -> question.about().equals(WeatherColumn.TMAX.name()));
        return Stream.concat(columns.stream(), WeatherQuestions.of(days, hottestIsRight, latitudeDegrees).stream())
                .sorted(Comparator.comparing(question -> WeatherQuestions.ABOUT.indexOf(question.about())))
                .toList();
    }

    Optional<LocalDate> first() {
        return days.stream().map(WeatherEntered::day).findFirst();
    }

    Optional<LocalDate> last() {
        return days.stream().map(WeatherEntered::day).reduce((before, after) -> after);
    }

    /** Days between the first and the last of which nothing reads. */
    long missing() {
        return days.isEmpty()
                ? 0
                : last().orElseThrow().toEpochDay() - first().orElseThrow().toEpochDay() + 1 - days.size();
    }

    int withoutRain() {
        return (int) days.stream()
                .filter(weather -> weather.rainMillimetres().isEmpty())
                .count();
    }
}
