package org.cupwright.app.desk.turf;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.history.FoldedFacts;
import org.cupwright.app.desk.history.RecordBytes;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSeries;

/** The weather that people wrote down: ten years of it are four thousand entries that hardly ever change. */
final class FoldedWeather implements FoldedFacts<RecordedWeather> {
    private static final RecordBytes<Kept> BYTES = new RecordBytes<>(Kept.class);

    /** Both kinds of weather, day by day. */
    public record Kept(List<WeatherDay> entered, List<WeatherDay> forecasts) {}

    @Override
    public String name() {
        return "weather 3";
    }

    @Override
    public RecordedWeather nothing() {
        return RecordedWeather.none();
    }

    @Override
    public List<Fact> between(FactsInEffect facts, Instant from, Instant before) {
        return facts.ofKinds(RecordedWeather.KINDS, from, before);
    }

    @Override
    public RecordedWeather with(RecordedWeather before, List<Fact> next) {
        return before.with(next);
    }

    @Override
    public byte[] write(RecordedWeather weather) {
        return BYTES.write(new Kept(
                weather.entered().days().stream().toList(),
                weather.forecasts().days().stream().toList()));
    }

    @Override
    public Optional<RecordedWeather> read(byte[] bytes) {
        return BYTES.read(bytes)
                .map(kept -> new RecordedWeather(WeatherSeries.of(kept.entered()), WeatherSeries.of(kept.forecasts())));
    }
}
