package org.cupwright.turf.weather;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/** The weather that people wrote into the logbook, as it was and as it was foretold. */
public final class RecordedWeather {
    /** Kinds of facts that say something of the weather. */
    public static final Set<String> KINDS = PayloadKinds.names(WeatherEntered.class, WeatherForecast.class);

    private RecordedWeather() {}

    /**
     * @param facts the logbook's facts in their order; of two entries for one day the later counts
     */
    public static WeatherSeries of(List<Fact> facts) {
        return WeatherSeries.of(facts.stream()
                .map(Fact::payload)
                .filter(WeatherEntered.class::isInstance)
                .map(payload -> toDay((WeatherEntered) payload))
                .toList());
    }

    /**
     * What was foretold, to be asked for days that nobody has entered.
     *
     * @param facts the logbook's facts in their order; of two forecasts of one day the one heard later counts
     */
    public static WeatherSeries forecasts(List<Fact> facts) {
        return WeatherSeries.of(facts.stream()
                .map(Fact::payload)
                .filter(WeatherForecast.class::isInstance)
                .map(payload -> toDay(((WeatherForecast) payload).ifItComesSo()))
                .toList());
    }

    /** All that the logbook knows of the weather, and what follows from it for days of which it says nothing. */
    public static WeatherOutlook outlook(List<Fact> facts) {
        return WeatherOutlook.of(of(facts), forecasts(facts));
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
                OptionalDouble.empty(),
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
