package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What the weather of a stretch of days rests on: how many were measured, how many are filled in, foretold, or taken
 * from elsewhere.
 *
 * @param first the first day
 * @param last the last day
 * @param days by source; sources of no day have 0
 */
public record WeatherBasis(LocalDate first, LocalDate last, Map<WeatherSource, Integer> days) {
    public WeatherBasis {
        Map<WeatherSource, Integer> all = new EnumMap<>(WeatherSource.class);
        for (WeatherSource source : WeatherSource.values()) {
            all.put(source, days.getOrDefault(source, 0));
        }
        days = Collections.unmodifiableMap(all);
    }

    /** Of the days from one to another, both included. */
    public static WeatherBasis of(WeatherOutlook outlook, LocalDate first, LocalDate last) {
        Map<WeatherSource, Integer> days = new EnumMap<>(WeatherSource.class);
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            WeatherSource source = outlook.find(day).map(KnownWeather::source).orElse(WeatherSource.ASSUMED);
            days.merge(source, 1, Integer::sum);
        }
        return new WeatherBasis(first, last, days);
    }

    public int days(WeatherSource source) {
        return days.get(source);
    }

    /** How many days there are. */
    public int all() {
        return days.values().stream().mapToInt(Integer::intValue).sum();
    }
}
