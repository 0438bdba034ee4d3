package org.cupwright.turf.weather;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/**
 * The weather that people wrote into the logbook.
 *
 * @param entered as it was
 * @param forecasts as it was foretold, to be asked for days that nobody has entered
 */
public record RecordedWeather(WeatherSeries entered, WeatherSeries forecasts) {
    /** Kinds of facts that say something of the weather. */
    public static final Set<String> KINDS = PayloadKinds.names(WeatherEntered.class, WeatherForecast.class);

    public static RecordedWeather none() {
        return new RecordedWeather(WeatherSeries.empty(), WeatherSeries.empty());
    }

    /**
     * What a logbook holds.
     *
     * @param facts in their order; of two entries for one day the later counts, and of two forecasts the one heard
     *     later
     */
    public static RecordedWeather of(List<Fact> facts) {
        return none().with(facts);
    }

    /** This weather with what was written later. */
    public RecordedWeather with(List<Fact> later) {
        return new RecordedWeather(entered.with(entered(later)), forecasts.with(forecasts(later)));
    }

    /** All that is known of the weather, and what follows from it for days of which it says nothing. */
    public WeatherOutlook outlook() {
        return WeatherOutlook.of(entered, forecasts);
    }

    private static WeatherSeries entered(List<Fact> facts) {
        return WeatherSeries.of(facts.stream()
                .map(Fact::payload)
                .filter(WeatherEntered.class::isInstance)
                .map(payload -> toDay((WeatherEntered) payload))
                .toList());
    }

    private static WeatherSeries forecasts(List<Fact> facts) {
        return WeatherSeries.of(facts.stream()
                .map(Fact::payload)
                .filter(WeatherForecast.class::isInstance)
                .map(payload -> toDay(((WeatherForecast) payload).ifItComesSo()))
                .toList());
    }

    private static WeatherDay toDay(WeatherEntered entered) {
        OptionalDouble sunshine = entered.sunshineMinutes().isPresent()
                ? OptionalDouble.of(entered.sunshineMinutes().getAsInt() / 60.0)
                : OptionalDouble.empty();
        return new WeatherDay(
                entered.day(),
                entered.highestCelsius(),
                entered.lowestCelsius(),
                entered.highestHumidityPercent(),
                entered.lowestHumidityPercent(),
                entered.windMetresPerSecond(),
                sunshine,
                entered.radiationMegajoules(),
                entered.dewPointCelsius(),
                rain(entered));
    }

    private static Optional<Rain> rain(WeatherEntered entered) {
        if (entered.rainMillimetres().isPresent() && entered.rainMillimetres().getAsDouble() > 0) {
            return Optional.of(Rain.of(entered.rainMillimetres().getAsDouble()));
        }
        boolean known = entered.rainMillimetres().isPresent() || entered.rainTrace();
        return known ? Optional.of(new Rain(0, entered.rainTrace())) : Optional.empty();
    }
}
