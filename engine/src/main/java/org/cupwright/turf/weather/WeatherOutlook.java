package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The best known weather of any day, past or coming: observed; a short gap filled between its neighbours; the forecast; what the
 * record has at that time of year. Only temperatures are ever filled in: rain that nobody measured stays unknown.
 */
public final class WeatherOutlook {
    /** A longer gap is not bridged (our choice). */
    public static final int LONGEST_GAP_DAYS = 5;

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
                .or(() -> known(climate.find(day), WeatherSource.CLIMATE));
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

    private static WeatherDay between(WeatherDay before, WeatherDay after, LocalDate day) {
        double share = (double) ChronoUnit.DAYS.between(before.day(), day)
                / ChronoUnit.DAYS.between(before.day(), after.day());
        return WeatherDay.of(
                day,
                before.highestCelsius() + share * (after.highestCelsius() - before.highestCelsius()),
                before.lowestCelsius() + share * (after.lowestCelsius() - before.lowestCelsius()));
    }
}
