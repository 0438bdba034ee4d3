package org.cupwright.app.desk.weather;

import static org.cupwright.app.desk.weather.WeatherColumn.not;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.cupwright.turf.water.Fao56;

/** One line of a table of weather: one day. */
final class WeatherLine {
    /** Rain that only wetted the gauge: common practice, no source. */
    private static final List<String> TRACE = List.of("t", "tr", "trace");

    private WeatherLine() {}

    static WeatherEntered read(Layout.Row row) {
        LocalDate day = row.find(WeatherColumn.DATE).orElseGet(() -> WrittenDay.inTable(""));
        double highest = needed(row, WeatherColumn.TMAX);
        double lowest = needed(row, WeatherColumn.TMIN);
        if (lowest > highest) {
            throw not("swapped", row.text(WeatherColumn.TMIN));
        }
        boolean trace = TRACE.contains(row.text(WeatherColumn.RAIN).toLowerCase(Locale.ROOT));
        OptionalDouble rain = trace ? OptionalDouble.of(0) : row.number(WeatherColumn.RAIN);
        OptionalDouble sunshine = row.number(WeatherColumn.SUNSHINE);
        try {
            return new WeatherEntered(
                    day,
                    highest,
                    lowest,
                    row.number(WeatherColumn.RHMAX),
                    row.number(WeatherColumn.RHMIN),
                    row.number(WeatherColumn.WIND),
                    sunshine.isPresent() ? OptionalInt.of((int) sunshine.getAsDouble()) : OptionalInt.empty(),
                    row.number(WeatherColumn.RADIATION),
                    dewPoint(row),
                    rain,
                    trace);
        } catch (ImpossibleFact beyond) {
            throw Problem.of(Message.of("weather.beyond", new Said(beyond.why())), Message.of("weather.try.beyond"));
        }
    }

    /** As it stands there, or from the vapour pressure. */
    private static OptionalDouble dewPoint(Layout.Row row) {
        OptionalDouble pressure = row.number(WeatherColumn.VAPOUR_PRESSURE);
        boolean given = row.number(WeatherColumn.DEW_POINT).isPresent();
        return given || pressure.isEmpty()
                ? row.number(WeatherColumn.DEW_POINT)
                : OptionalDouble.of(Math.rint(100 * Fao56.dewPointCelsius(pressure.getAsDouble())) / 100);
    }

    private static double needed(Layout.Row row, Column<Double> column) {
        return row.number(column).orElseThrow(() -> not("noTemperature", column.name()));
    }
}
