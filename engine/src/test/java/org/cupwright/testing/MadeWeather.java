package org.cupwright.testing;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.WeatherDay;

/** Days of whose weather more is known than the temperatures. */
public final class MadeWeather {
    private MadeWeather() {}

    public static WeatherDay raining(LocalDate day, double highestCelsius, double lowestCelsius, double millimetres) {
        OptionalDouble unknown = OptionalDouble.empty();
        Optional<Rain> rain = Optional.of(Rain.of(millimetres));
        return new WeatherDay(
                day, highestCelsius, lowestCelsius, unknown, unknown, unknown, unknown, unknown, unknown, rain);
    }

    public static WeatherDay windy(WeatherDay day, double metresPerSecond) {
        return new WeatherDay(
                day.day(),
                day.highestCelsius(),
                day.lowestCelsius(),
                day.highestHumidityPercent(),
                day.lowestHumidityPercent(),
                OptionalDouble.of(metresPerSecond),
                day.sunshineHours(),
                day.radiationMegajoules(),
                day.dewPointCelsius(),
                day.rain());
    }

    public static WeatherDay humid(WeatherDay day, double highestPercent, double lowestPercent) {
        return new WeatherDay(
                day.day(),
                day.highestCelsius(),
                day.lowestCelsius(),
                OptionalDouble.of(highestPercent),
                OptionalDouble.of(lowestPercent),
                day.windMetresPerSecond(),
                day.sunshineHours(),
                day.radiationMegajoules(),
                day.dewPointCelsius(),
                day.rain());
    }

    public static WeatherDay sunny(WeatherDay day, double hours) {
        return new WeatherDay(
                day.day(),
                day.highestCelsius(),
                day.lowestCelsius(),
                day.highestHumidityPercent(),
                day.lowestHumidityPercent(),
                day.windMetresPerSecond(),
                OptionalDouble.of(hours),
                day.radiationMegajoules(),
                day.dewPointCelsius(),
                day.rain());
    }

    /** As a station measures it: radiation, MJ/m², and the dew point. */
    public static WeatherDay measured(WeatherDay day, double megajoules, double dewPointCelsius) {
        return new WeatherDay(
                day.day(),
                day.highestCelsius(),
                day.lowestCelsius(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                day.windMetresPerSecond(),
                OptionalDouble.empty(),
                OptionalDouble.of(megajoules),
                OptionalDouble.of(dewPointCelsius),
                day.rain());
    }
}
