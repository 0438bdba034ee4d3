package org.cupwright.cupchange;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.units.GreenSpeed;

/** What was read or counted on a day. */
public sealed interface DayReading extends Payload {
    @Override
    default boolean needsHole() {
        return false;
    }

    /**
     * The green speed was read.
     *
     * @param feet the reading; downhill, when it was read both ways
     * @param otherWayFeet the reading the other way
     */
    record SpeedRead(double feet, OptionalDouble otherWayFeet) implements DayReading {
        public SpeedRead {
            Checks.between("speedReading", feet, 1, 60, "ft");
            Checks.between("speedReading", otherWayFeet, 1, 60, "ft");
            double level = level(feet, otherWayFeet);
            Checks.between("greenSpeed", level, GreenSpeed.SLOWEST_FEET, GreenSpeed.FASTEST_FEET, "ft");
        }

        /** The speed on the level; both ways give 2·a·b/(a+b) (Brede, USGA Green Section Record 28(6), 1990). */
        public GreenSpeed speed() {
            return new GreenSpeed(level(feet, otherWayFeet));
        }

        private static double level(double feet, OptionalDouble otherWayFeet) {
            double other = otherWayFeet.orElse(feet);
            return 2 * feet * other / (feet + other);
        }
    }

    /** Rounds played on a day. */
    record RoundsPlayed(LocalDate day, int rounds) implements DayReading {
        public RoundsPlayed {
            Checks.count("rounds", rounds, 2000);
        }
    }

    /**
     * The weather of a day, as far as it is known.
     *
     * @param windMetresPerSecond mean of the day, at the station's height
     * @param sunshineMinutes bright sunshine
     * @param radiationMegajoules solar radiation on level ground, MJ/m² over the day
     * @param dewPointCelsius mean of the day
     * @param rainMillimetres rain of the day; 0 with {@code rainTrace} when it only wetted the gauge
     */
    record WeatherEntered(
            LocalDate day,
            double highestCelsius,
            double lowestCelsius,
            OptionalDouble highestHumidityPercent,
            OptionalDouble lowestHumidityPercent,
            OptionalDouble windMetresPerSecond,
            OptionalInt sunshineMinutes,
            OptionalDouble radiationMegajoules,
            OptionalDouble dewPointCelsius,
            OptionalDouble rainMillimetres,
            boolean rainTrace)
            implements DayReading {
        public WeatherEntered {
            WeatherChecks.temperatures(highestCelsius, lowestCelsius);
            WeatherChecks.humidity(highestHumidityPercent, lowestHumidityPercent);
            WeatherChecks.sky(windMetresPerSecond, sunshineMinutes, rainMillimetres);
            WeatherChecks.station(radiationMegajoules, dewPointCelsius, highestCelsius);
        }
    }

    /**
     * What was foretold of a day's weather, as it was heard. Of several for one day the last heard counts, and none
     * once the day's own weather is entered. Rain that is foretold has not fallen.
     *
     * @param windMetresPerSecond mean of the day, at the station's height
     * @param sunshineMinutes bright sunshine
     * @param radiationMegajoules solar radiation on level ground, MJ/m² over the day
     * @param dewPointCelsius mean of the day
     */
    record WeatherForecast(
            LocalDate day,
            double highestCelsius,
            double lowestCelsius,
            OptionalDouble highestHumidityPercent,
            OptionalDouble lowestHumidityPercent,
            OptionalDouble windMetresPerSecond,
            OptionalInt sunshineMinutes,
            OptionalDouble radiationMegajoules,
            OptionalDouble dewPointCelsius,
            OptionalDouble rainMillimetres)
            implements DayReading {
        public WeatherForecast {
            WeatherChecks.temperatures(highestCelsius, lowestCelsius);
            WeatherChecks.humidity(highestHumidityPercent, lowestHumidityPercent);
            WeatherChecks.sky(windMetresPerSecond, sunshineMinutes, rainMillimetres);
            WeatherChecks.station(radiationMegajoules, dewPointCelsius, highestCelsius);
        }

        /** The forecast of a day that is to come as this one would have been; a trace of rain is none. */
        public static WeatherForecast of(WeatherEntered as) {
            return new WeatherForecast(
                    as.day(),
                    as.highestCelsius(),
                    as.lowestCelsius(),
                    as.highestHumidityPercent(),
                    as.lowestHumidityPercent(),
                    as.windMetresPerSecond(),
                    as.sunshineMinutes(),
                    as.radiationMegajoules(),
                    as.dewPointCelsius(),
                    as.rainMillimetres());
        }

        /** The day as it will have been if it comes so. */
        public WeatherEntered ifItComesSo() {
            return new WeatherEntered(
                    day,
                    highestCelsius,
                    lowestCelsius,
                    highestHumidityPercent,
                    lowestHumidityPercent,
                    windMetresPerSecond,
                    sunshineMinutes,
                    radiationMegajoules,
                    dewPointCelsius,
                    rainMillimetres,
                    false);
        }
    }
}
