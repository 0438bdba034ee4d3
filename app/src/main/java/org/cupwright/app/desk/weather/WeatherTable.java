package org.cupwright.app.desk.weather;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cupwright.app.desk.table.FarDays;
import org.cupwright.app.desk.table.NotRead;
import org.cupwright.app.desk.table.NotReadLine;
import org.cupwright.app.desk.table.TableFile;
import org.cupwright.cupchange.DayReading.WeatherEntered;

/** A table of weather, one line a day, as far as it reads. */
final class WeatherTable implements TableFile.Taker {
    private final DaysTaken daysTaken;
    private final WeatherFormat format;
    private final SortedMap<LocalDate, WeatherEntered> days = new TreeMap<>();
    private final Map<LocalDate, TableFile.Line> lines = new HashMap<>();
    private final List<NotReadLine> notRead = new ArrayList<>();
    private Optional<String> unended = Optional.empty();

    /** Which days are taken: past ones, or coming ones. */
    interface DaysTaken {
        /** @throws NotRead for a day that is not */
        void check(LocalDate day) throws NotRead;
    }

    private WeatherTable(WeatherFormat format, DaysTaken daysTaken) {
        this.format = format;
        this.daysTaken = daysTaken;
    }

    static WeatherTable read(InputStream in, WeatherFormat.Said said, DaysTaken daysTaken) throws IOException {
        TableFile file = TableFile.of(in);
        WeatherTable table = new WeatherTable(WeatherFormat.of(file, said), daysTaken);
        table.unended = file.read(table);
        return table;
    }

    @Override
    public void line(TableFile.Line line) throws NotRead {
        WeatherEntered weather = WeatherLine.read(format, line.fields());
        daysTaken.check(weather.day());
        if (days.putIfAbsent(weather.day(), weather) != null) {
            throw WeatherLine.not("twice", weather.day().toString());
        }
        lines.put(weather.day(), line);
    }

    /** Takes back lines whose days are far from all others. */
    void withoutFarDays() {
        for (LocalDate day : FarDays.among(days.keySet())) {
            days.remove(day);
            notRead.add(lines.get(day).notRead(FarDays.why(day)));
        }
        notRead.sort(Comparator.comparing(NotReadLine::number));
    }

    @Override
    public void notRead(NotReadLine line) {
        notRead.add(line);
    }

    /** In order of days. */
    Collection<WeatherEntered> days() {
        return days.values();
    }

    Optional<LocalDate> first() {
        return days.isEmpty() ? Optional.empty() : Optional.of(days.firstKey());
    }

    Optional<LocalDate> last() {
        return days.isEmpty() ? Optional.empty() : Optional.of(days.lastKey());
    }

    /** Days between the first and the last of which nothing reads. */
    long missing() {
        return days.isEmpty()
                ? 0
                : days.lastKey().toEpochDay() - days.firstKey().toEpochDay() + 1 - days.size();
    }

    int withoutRain() {
        return (int) days.values().stream()
                .filter(weather -> weather.rainMillimetres().isEmpty())
                .count();
    }

    List<NotReadLine> notRead() {
        return List.copyOf(notRead);
    }

    /** The last line, when the file may have lost its end. */
    Optional<String> unended() {
        return unended;
    }

    Map<String, String> units() {
        return format.unitNames();
    }
}
