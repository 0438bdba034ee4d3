package org.cupwright.app.desk.weather;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a table of weather can tell of a day. Names are those that weather stations and services commonly write (recalled). */
public enum WeatherColumn {
    DATE("date", List.of(), "day", "datum"),
    TMAX("tmax", Units.TEMPERATURE, "maxtemp", "maxtemperature", "tempmax", "temperaturemax", "tx", "high", "maximum"),
    TMIN("tmin", Units.TEMPERATURE, "mintemp", "mintemperature", "tempmin", "temperaturemin", "tn", "low", "minimum"),
    RAIN("rain", Units.RAIN, "precipitation", "precip", "prcp", "rr", "rainfall"),
    WIND("wind", Units.WIND, "windspeed", "meanwind", "windmean", "avgwind"),
    RHMAX("rhmax", Units.PERCENT, "maxhumidity", "humiditymax", "maxrh"),
    RHMIN("rhmin", Units.PERCENT, "minhumidity", "humiditymin", "minrh"),
    SUNSHINE("sunshine", Units.SUNSHINE, "sun", "sunshineduration");

    private final String typed;
    private final List<Unit> units;
    private final List<String> otherNames;

    WeatherColumn(String typed, List<Unit> units, String... otherNames) {
        this.typed = typed;
        this.units = units;
        this.otherNames = List.of(otherNames);
    }

    /**
     * A unit, and how it becomes the logbook's.
     *
     * @param name as it is written
     * @param factor value in the logbook's unit = (value − shift) · factor
     */
    record Unit(String name, double shift, double factor) {
        double toLogbook(double value) {
            return (value - shift) * factor;
        }
    }

    /** The first of each is the logbook's own. Factors are exact by definition. */
    private static final class Units {
        static final List<Unit> TEMPERATURE = List.of(new Unit("C", 0, 1), new Unit("F", 32, 5.0 / 9));
        static final List<Unit> RAIN = List.of(new Unit("mm", 0, 1), new Unit("in", 0, 25.4));
        static final List<Unit> WIND =
                List.of(new Unit("m/s", 0, 1), new Unit("km/h", 0, 1 / 3.6), new Unit("mph", 0, 0.44704));
        static final List<Unit> PERCENT = List.of(new Unit("%", 0, 1));
        static final List<Unit> SUNSHINE = List.of(new Unit("min", 0, 1), new Unit("h", 0, 60));
    }

    /** The name by which a person means it. */
    public String typed() {
        return typed;
    }

    List<Unit> units() {
        return units;
    }

    Optional<Unit> unit(String name) {
        return units.stream().filter(unit -> unit.name().equalsIgnoreCase(name)).findFirst();
    }

    boolean isCalled(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        return plain.equals(typed) || otherNames.contains(plain);
    }

    static Optional<WeatherColumn> find(String typed) {
        for (WeatherColumn column : values()) {
            if (column.typed.equalsIgnoreCase(typed)) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
