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

    /** A watt per square metre over a day; a langley is a calorie per square centimetre (FAO-56, table 3, recalled). */
    private static final List<Unit> MEGAJOULES = List.of(
            new Unit("MJ/m2", 0, 1),
            new Unit("W/m2", 0, 0.0864),
            new Unit("Ly", 0, 0.041868),
            new Unit("kWh/m2", 0, 3.6));

    private static final List<Unit> KILOPASCALS = List.of(new Unit("kPa", 0, 1), new Unit("hPa", 0, 0.1));

    /** What stands for "not measured" in tables of weather: common practice, no source. */
    private static final List<String> MISSING =
            List.of("", "-", "--", "–", "na", "n/a", "nan", "null", "m", "-99", "-99.9", "-999", "-999.9", "-9999");

    private static final double PER_UNIT = 100;

    /** As much as the sky lets through nowhere on a day: what the logbook takes. */
    private static final double MOST_MEGAJOULES = 50;

    /** Saturated air of 36 °C: no place has it in the mean of a day; in hectopascals nearly every day has more. */
    private static final double MOST_KILOPASCALS = 6;

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

    static final Column<Double> RADIATION = measured("radiation", MEGAJOULES)
            .called("solarradiation", "globalradiation", "solar", "srad", "rs")
            .only(radiation -> radiation >= 0 && radiation <= MOST_MEGAJOULES, text -> not("radiation", text))
            .asking(WeatherQuestions::radiation);
    static final Column<Double> DEW_POINT = measured("dewpoint", CELSIUS).called("dewpointtemperature", "dew", "td");
    static final Column<Double> VAPOUR_PRESSURE = exact("vapourpressure", KILOPASCALS)
            .called("vaporpressure", "actualvapourpressure", "actualvaporpressure", "ea")
            .only(pressure -> pressure > 0 && pressure <= MOST_KILOPASCALS, text -> not("vapourPressure", text));

    static final List<Column<?>> ALL =
            List.of(DATE, TMAX, TMIN, RAIN, WIND, RHMAX, RHMIN, SUNSHINE, RADIATION, DEW_POINT, VAPOUR_PRESSURE);

    private WeatherColumn() {}

    /** A number as it is kept: to a hundredth of the logbook's unit, finer than any of it is measured. */
    private static Column<Double> measured(String name, List<Unit> units) {
        return exact(name, units).made(value -> Math.rint(value * PER_UNIT) / PER_UNIT);
    }

    private static Column<Double> exact(String name, List<Unit> units) {
        return Column.number(name).in(units).without(MISSING).otherwise(text -> not("number", text));
    }

    static Problem not(String what, String value) {
        return Problem.of(Message.of("weather." + what, new Name(value)), Message.of("weather.try." + what));
    }
}
