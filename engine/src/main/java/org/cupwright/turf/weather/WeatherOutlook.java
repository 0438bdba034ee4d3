package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * The best known weather of any day, past or coming: observed; a short gap filled between its neighbours; the forecast;
 * what the record has at that time of year; in the first year, for some weeks, what the last days were like. Only
 * temperatures are ever filled in: rain that nobody measured stays unknown.
 */
public final class WeatherOutlook {
    /** A longer gap is not bridged (our choice). */
    public static final int LONGEST_GAP_DAYS = 5;

    /** So many days of the record stand for the weeks after it, in a record's first year (our choice). */
    private static final int RECENT_DAYS = 14;

    /** And for so many days (our choice: the longest rest, and two weeks). */
    private static final int RECENT_REACH_DAYS = 42;

    private final WeatherSeries observed;
    private final WeatherProvider forecast;
    private final Climate climate;

    private WeatherOutlook(WeatherSeries observed, WeatherProvider forecast) {
        this.observed = observed;
        this.forecast = forecast;
        this.climate = new Climate(observed);
    }

    public static WeatherOutlook of(WeatherSeries observed) {
        return new WeatherOutlook(observed, day -> Optional.empty());
    }

    public static WeatherOutlook of(WeatherSeries observed, WeatherProvider forecast) {
        return new WeatherOutlook(observed, forecast);
    }

    /** Empty when nothing at all is known of such a day. */
    public Optional<KnownWeather> find(LocalDate day) {
        return known(observed.find(day), WeatherSource.OBSERVED)
                .or(() -> known(filled(day), WeatherSource.FILLED))
                .or(() -> known(forecast.find(day), WeatherSource.FORECAST))
                .or(() -> known(climate.find(day), WeatherSource.CLIMATE))
                .or(() -> known(recent(day), WeatherSource.RECENT));
    }

    private static Optional<KnownWeather> known(Optional<WeatherDay> weather, WeatherSource source) {
        return weather.map(found -> new KnownWeather(found, source));
    }

    private Optional<WeatherDay> filled(LocalDate day) {
        return observed.lastBefore(day)
                .flatMap(before -> observed.firstAfter(day)
                        .filter(after -> ChronoUnit.DAYS.between(before.day(), after.day()) <= LONGEST_GAP_DAYS + 1)
                        .map(after -> between(before, after, day)));
    }

    private Optional<WeatherDay> recent(LocalDate day) {
        return observed.lastBefore(day)
                .filter(last -> ChronoUnit.DAYS.between(last.day(), day) <= RECENT_REACH_DAYS)
                .map(last -> {
                    List<WeatherDay> days = observed.between(last.day().minusDays(RECENT_DAYS - 1L), last.day());
                    return WeatherDay.of(
                            day,
                            days.stream()
                                    .mapToDouble(WeatherDay::highestCelsius)
                                    .average()
                                    .orElseThrow(),
                            days.stream()
                                    .mapToDouble(WeatherDay::lowestCelsius)
                                    .average()
                                    .orElseThrow());
                });
    }

    private static WeatherDay between(WeatherDay before, WeatherDay after, LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(before.day(), day)
                / ChronoUnit.DAYS.between(before.day(), after.day());
        return WeatherDay.of(
                day,
                before.highestCelsius() + share * (after.highestCelsius() - before.highestCelsius()),
                before.lowestCelsius() + share * (after.lowestCelsius() - before.lowestCelsius()));
    }
}
