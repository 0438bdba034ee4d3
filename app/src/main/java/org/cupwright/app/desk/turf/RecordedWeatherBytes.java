package org.cupwright.app.desk.turf;

import java.io.IOException;
import org.cupwright.app.desk.history.StateIn;
import org.cupwright.app.desk.history.StateOut;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSeries;

/** Recorded weather as bytes. */
final class RecordedWeatherBytes {
    private RecordedWeatherBytes() {}

    static void write(StateOut out, RecordedWeather weather) throws IOException {
        out.each(weather.entered().days(), RecordedWeatherBytes::day);
        out.each(weather.forecasts().days(), RecordedWeatherBytes::day);
    }

    static RecordedWeather read(StateIn in) throws IOException {
        return new RecordedWeather(series(in), series(in));
    }

    private static void day(StateOut out, WeatherDay day) throws IOException {
        out.day(day.day());
        out.number(day.highestCelsius());
        out.number(day.lowestCelsius());
        out.number(day.highestHumidityPercent());
        out.number(day.lowestHumidityPercent());
        out.number(day.windMetresPerSecond());
        out.number(day.sunshineHours());
        out.number(day.radiationMegajoules());
        out.optional(day.rain(), (to, rain) -> {
            to.number(rain.millimetres());
            to.flag(rain.trace());
        });
    }

    private static WeatherSeries series(StateIn in) throws IOException {
        return WeatherSeries.of(in.each(RecordedWeatherBytes::day));
    }

    private static WeatherDay day(StateIn in) throws IOException {
        return new WeatherDay(
                in.day(),
                in.number(),
                in.number(),
                in.optionalNumber(),
                in.optionalNumber(),
                in.optionalNumber(),
                in.optionalNumber(),
                in.optionalNumber(),
                in.optional(from -> new Rain(from.number(), from.flag())));
    }
}
