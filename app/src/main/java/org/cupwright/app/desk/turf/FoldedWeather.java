package org.cupwright.app.desk.turf;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.cupwright.app.desk.history.FoldedFacts;
import org.cupwright.app.desk.history.StateIn;
import org.cupwright.app.desk.history.StateOut;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.weather.RecordedWeather;

/** The weather that people wrote down: ten years of it are four thousand entries that hardly ever change. */
final class FoldedWeather implements FoldedFacts<RecordedWeather> {
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
    public void write(StateOut out, RecordedWeather weather) throws IOException {
        RecordedWeatherBytes.write(out, weather);
    }

    @Override
    public RecordedWeather read(StateIn in) throws IOException {
        return RecordedWeatherBytes.read(in);
    }
}
