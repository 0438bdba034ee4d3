package org.cupwright.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSeries;

/** Daily weather of a real place, 2012–2015; source in SOURCES.txt beside the file. */
public final class SeattleWeather {
    private SeattleWeather() {}

    public static WeatherSeries read() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                SeattleWeather.class.getResourceAsStream("seattle-weather.csv"), StandardCharsets.UTF_8))) {
            List<WeatherDay> days =
                    lines.lines().skip(1).map(SeattleWeather::day).toList();
            return WeatherSeries.of(days);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static WeatherDay day(String line) {
        String[] cells = line.split(",", -1);
        double highest = Double.parseDouble(cells[2]);
        double lowest = Double.parseDouble(cells[3]);
        double rain = Double.parseDouble(cells[1]);
        WeatherDay day = MadeWeather.raining(LocalDate.parse(cells[0]), highest, lowest, rain);
        return MadeWeather.windy(day, Double.parseDouble(cells[4]));
    }
}
