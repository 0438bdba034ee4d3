package org.cupwright.app.desk.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.app.desk.log.WrittenDay;
import org.cupwright.app.desk.table.NotRead;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;

/** One line of a table of weather: one day. */
final class WeatherLine {
    /** What stands for "not measured" in tables of weather: common practice, no source. */
    private static final List<String> MISSING =
            List.of("", "-", "--", "–", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-999.9", "-9999");

    /** Rain that only wetted the gauge: common practice, no source. */
    private static final List<String> TRACE = List.of("t", "tr", "trace");

    /** Numbers are kept to a hundredth of the logbook's unit: finer than any of it is measured. */
    private static final double PER_UNIT = 100;

    private final WeatherFormat format;
    private final Map<WeatherColumn, String> fields;

    private WeatherLine(WeatherFormat format, List<String> fields) {
        this.format = format;
        this.fields = format.fields(fields);
    }

    static boolean isMissing(String field) {
        return MISSING.contains(field.toLowerCase(Locale.ROOT));
    }

    static WeatherEntered read(WeatherFormat format, List<String> fields) throws NotRead {
        return new WeatherLine(format, fields).weather();
    }

    private WeatherEntered weather() throws NotRead {
        LocalDate day = day();
        double highest = needed(WeatherColumn.TMAX);
        double lowest = needed(WeatherColumn.TMIN);
        if (lowest > highest) {
            throw not("swapped", fields.get(WeatherColumn.TMIN));
        }
        boolean trace =
                TRACE.contains(fields.getOrDefault(WeatherColumn.RAIN, "").toLowerCase(Locale.ROOT));
        OptionalDouble rain = trace ? OptionalDouble.of(0) : number(WeatherColumn.RAIN);
        if (rain.isPresent() && rain.getAsDouble() < 0) {
            throw not("rain", fields.get(WeatherColumn.RAIN));
        }
        OptionalDouble sunshine = number(WeatherColumn.SUNSHINE);
        try {
            return new WeatherEntered(
                    day,
                    highest,
                    lowest,
                    number(WeatherColumn.RHMAX),
                    number(WeatherColumn.RHMIN),
                    number(WeatherColumn.WIND),
                    sunshine.isPresent()
                            ? OptionalInt.of((int) Math.rint(sunshine.getAsDouble()))
                            : OptionalInt.empty(),
                    rain,
                    trace);
        } catch (ImpossibleFact beyond) {
            throw new NotRead(Message.of("weather.beyond", new Said(beyond.why())), Message.of("weather.try.beyond"));
        }
    }

    private LocalDate day() throws NotRead {
        return WrittenDay.inTable(fields.getOrDefault(WeatherColumn.DATE, ""));
    }

    private double needed(WeatherColumn column) throws NotRead {
        return number(column).orElseThrow(() -> not("noTemperature", column.typed()));
    }

    private OptionalDouble number(WeatherColumn column) throws NotRead {
        String text = fields.get(column);
        if (text == null) {
            return OptionalDouble.empty();
        }
        double value = format.separator().number(text);
        if (Double.isNaN(value)) {
            throw not("number", text);
        }
        return OptionalDouble.of(Math.rint(format.unit(column).toLogbook(value) * PER_UNIT) / PER_UNIT);
    }

    static NotRead not(String what, String value) {
        return new NotRead(Message.of("weather." + what, new Name(value)), Message.of("weather.try." + what));
    }
}
