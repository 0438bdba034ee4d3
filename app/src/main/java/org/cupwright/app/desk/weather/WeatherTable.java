package org.cupwright.app.desk.weather;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.NotRead;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;

/**
 * A table of weather, one line a day, as far as it reads.
 *
 * @param days in their order, each but once
 * @param notRead lines that do not read
 * @param unended the last line, when the file may have lost its end
 * @param units by the column's name: in which it was read
 */
record WeatherTable(
        List<WeatherEntered> days, List<NotReadLine> notRead, Optional<String> unended, Map<String, String> units) {
    /** Which days are taken: past ones, or coming ones. */
    interface DaysTaken {
        /** @throws NotRead for a day that is not */
        void check(LocalDate day) throws NotRead;
    }

    static WeatherTable read(InputStream in, WeatherFormat.Said said, DaysTaken daysTaken, boolean farDaysAreRight)
            throws IOException {
        Table table = Table.of(in);
        Layout layout = WeatherFormat.of(table, said);
        Set<LocalDate> taken = new HashSet<>();
        Reading<WeatherEntered> reading = table.read(line -> {
            WeatherEntered weather = WeatherLine.read(layout.row(line));
            daysTaken.check(weather.day());
            if (!taken.add(weather.day())) {
                throw WeatherColumn.not("twice", weather.day().toString());
            }
            return weather;
        });
        if (!farDaysAreRight) {
            reading.withoutFarDays(WeatherEntered::day);
        }
        List<WeatherEntered> days = reading.values().stream()
                .sorted(Comparator.comparing(WeatherEntered::day))
                .toList();
        return new WeatherTable(days, reading.notRead(), reading.unended(), layout.unitNames());
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
