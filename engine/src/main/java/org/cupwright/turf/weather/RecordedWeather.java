package org.cupwright.turf.weather;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/** The weather that people wrote into the logbook. */
public final class RecordedWeather {
    /** Kinds of facts that say something of the weather. */
    public static final Set<String> KINDS = PayloadKinds.names(WeatherEntered.class);

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
