package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weather of one day, as far as it is known.
 *
 * @param day the calendar day in the course's zone
 * @param highestCelsius highest air temperature
 * @param lowestCelsius lowest air temperature
 * @param highestHumidityPercent highest relative humidity; a station that gives only the mean fills in both with it
 * @param lowestHumidityPercent lowest relative humidity
 * @param windMetresPerSecond mean wind at the station's height
 * @param sunshineHours bright sunshine
 * @param radiationMegajoules solar radiation, MJ/m² and day
 * @param dewPointCelsius mean dew point; where it is known, humidities are not needed
 * @param rain empty when nobody knows
 */
public record WeatherDay(
        LocalDate day,
        double highestCelsius,
        double lowestCelsius,
        OptionalDouble highestHumidityPercent,
        OptionalDouble lowestHumidityPercent,
        OptionalDouble windMetresPerSecond,
        OptionalDouble sunshineHours,
        OptionalDouble radiationMegajoules,
        OptionalDouble dewPointCelsius,
        Optional<Rain> rain) {
    public WeatherDay {
        if (!(lowestCelsius >= -90 && highestCelsius <= 65 && lowestCelsius <= highestCelsius)) {
            throw new IllegalArgumentException("temperatures of " + day + ": lowest " + lowestCelsius + ", highest "
                    + highestCelsius + " °C; the lowest must not be above the highest, both within -90 to 65");
        }
        check(day, "highest humidity", highestHumidityPercent, 100);
        check(day, "lowest humidity", lowestHumidityPercent, highestHumidityPercent.orElse(100));
        check(day, "wind", windMetresPerSecond, 100);
        check(day, "sunshine", sunshineHours, 24);
        check(day, "radiation", radiationMegajoules, 50);
    }

    private static void check(LocalDate day, String what, OptionalDouble value, double most) {
        if (value.isPresent() && !(value.getAsDouble() >= 0 && value.getAsDouble() <= most)) {
            throw new IllegalArgumentException(
                    what + " of " + day + ": " + value.getAsDouble() + " is outside 0 to " + most);
        }
    }

    /** A day of which only the temperatures are known. */
    public static WeatherDay of(LocalDate day, double highestCelsius, double lowestCelsius) {
        return new WeatherDay(
                day,
                highestCelsius,
                lowestCelsius,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** Mean of highest and lowest, as both the growth potential and FAO-56 take it. */
    public double meanCelsius() {
        return (highestCelsius + lowestCelsius) / 2;
    }
}
