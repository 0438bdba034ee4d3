package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** A record of daily weather, gaps allowed. */
public final class WeatherSeries implements WeatherProvider {
    private final NavigableMap<LocalDate, WeatherDay> days;

    private WeatherSeries(NavigableMap<LocalDate, WeatherDay> days) {
        this.days = Collections.unmodifiableNavigableMap(days);
    }

    /**
     * @param days in any order; of two entries for one day the later in the collection counts
     */
    public static WeatherSeries of(Collection<WeatherDay> days) {
        NavigableMap<LocalDate, WeatherDay> byDay = new TreeMap<>();
        days.forEach(day -> byDay.put(day.day(), day));
        return new WeatherSeries(byDay);
    }

    public static WeatherSeries empty() {
        return of(List.of());
    }

    /** This record with other entries laid over it: for a day that both have, the other counts. */
    public WeatherSeries with(WeatherSeries other) {
        NavigableMap<LocalDate, WeatherDay> both = new TreeMap<>(days);
        both.putAll(other.days);
        return new WeatherSeries(both);
    }

    @Override
    public Optional<WeatherDay> find(LocalDate day) {
        return Optional.ofNullable(days.get(day));
    }

    /** In order of days. */
    public Collection<WeatherDay> days() {
        return days.values();
    }

    Optional<WeatherDay> lastBefore(LocalDate day) {
        return Optional.ofNullable(days.lowerEntry(day)).map(NavigableMap.Entry::getValue);
    }

    List<WeatherDay> between(LocalDate first, LocalDate last) {
        return List.copyOf(days.subMap(first, true, last, true).values());
    }

    Optional<WeatherDay> firstAfter(LocalDate day) {
        return Optional.ofNullable(days.higherEntry(day)).map(NavigableMap.Entry::getValue);
    }
}
