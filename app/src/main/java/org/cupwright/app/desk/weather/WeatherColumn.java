package org.cupwright.app.desk.weather;

import java.time.LocalDate;
import java.util.List;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Unit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * What a table of weather can tell of a day. Names are those that weather stations and services commonly write
 * (recalled); factors of units are exact by definition.
 */
public final class WeatherColumn {
    private static final List<Unit> CELSIUS = List.of(new Unit("C", 0, 1), new Unit("F", 32, 5.0 / 9));
    private static final List<Unit> MILLIMETRES = List.of(new Unit("mm", 0, 1), new Unit("in", 0, 25.4));
    private static final List<Unit> METRES_PER_SECOND =
            List.of(new Unit("m/s", 0, 1), new Unit("km/h", 0, 1 / 3.6), new Unit("mph", 0, 0.44704));
    private static final List<Unit> PERCENT = List.of(new Unit("%", 0, 1));
    private static final List<Unit> MINUTES = List.of(new Unit("min", 0, 1), new Unit("h", 0, 60));

    /** What stands for "not measured" in tables of weather: common practice, no source. */
    private static final List<String> MISSING =
            List.of("", "-", "--", "–", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-999.9", "-9999");

    private static final double PER_UNIT = 100;

    static final Column<LocalDate> DATE =
            Column.day("date").called("day", "datum").needed().without(MISSING);
    static final Column<Double> TMAX = measured("tmax", CELSIUS)
            .called("maxtemp", "maxtemperature", "tempmax", "temperaturemax", "tx", "high", "maximum")
            .needed()
            .asking(WeatherQuestions::hottest);
    static final Column<Double> TMIN = measured("tmin", CELSIUS)
            .called("mintemp", "mintemperature", "tempmin", "temperaturemin", "tn", "low", "minimum")
            .needed();
    static final Column<Double> RAIN = measured("rain", MILLIMETRES)
            .called("precipitation", "precip", "prcp", "rr", "rainfall")
            .only(rain -> rain >= 0, text -> not("rain", text))
            .asking(WeatherQuestions::rain);
    static final Column<Double> WIND = measured("wind", METRES_PER_SECOND)
            .called("windspeed", "meanwind", "windmean", "avgwind")
            .asking(WeatherQuestions::wind);
    static final Column<Double> RHMAX = measured("rhmax", PERCENT).called("maxhumidity", "humiditymax", "maxrh");
    static final Column<Double> RHMIN = measured("rhmin", PERCENT).called("minhumidity", "humiditymin", "minrh");
    static final Column<Double> SUNSHINE = measured("sunshine", MINUTES)
            .called("sun", "sunshineduration")
            .made(Math::rint)
            .asking(WeatherQuestions::sunshine);

    static final List<Column<?>> ALL = List.of(DATE, TMAX, TMIN, RAIN, WIND, RHMAX, RHMIN, SUNSHINE);

    private WeatherColumn() {}

    /** A number as it is kept: to a hundredth of the logbook's unit, finer than any of it is measured. */
    private static Column<Double> measured(String name, List<Unit> units) {
        return Column.number(name)
                .in(units)
                .without(MISSING)
                .otherwise(text -> not("number", text))
                .made(value -> Math.rint(value * PER_UNIT) / PER_UNIT);
    }

    static Problem not(String what, String value) {
        return Problem.of(Message.of("weather." + what, new Name(value)), Message.of("weather.try." + what));
    }
}
