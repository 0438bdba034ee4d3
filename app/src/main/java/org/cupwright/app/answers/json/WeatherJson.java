package org.cupwright.app.answers.json;

import java.util.Optional;
import org.cupwright.app.desk.weather.ListWeather;
import org.cupwright.app.texts.Texts;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSource;
import tools.jackson.databind.JsonNode;

/** Weather as scripts read it: what is known of each day, and what reads of a table. */
public final class WeatherJson {
    private final Shapes shapes;

    public WeatherJson(Texts texts) {
        this.shapes = new Shapes(texts).as(ListWeather.Day.class, WeatherJson::day);
    }

    public JsonNode list(ListWeather.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", answer.course())
                .with("basis", answer.basis())
                .with("gaps", answer.gaps())
                .with("days", answer.days()));
    }

    private static Shape day(ListWeather.Day day) {
        Optional<WeatherDay> known = day.known().map(KnownWeather::weather);
        Optional<Rain> rain = known.flatMap(WeatherDay::rain);
        return new Shape()
                .with("day", day.day())
                .with("source", day.known().map(KnownWeather::source).orElse(WeatherSource.ASSUMED))
                .with("highestCelsius", known.map(WeatherDay::highestCelsius))
                .with("lowestCelsius", known.map(WeatherDay::lowestCelsius))
                .with("rainMillimetres", rain.map(Rain::millimetres))
                .with("rainTrace", rain.map(Rain::trace).orElse(false))
                .with("windMetresPerSecond", known.map(WeatherDay::windMetresPerSecond));
    }
}
