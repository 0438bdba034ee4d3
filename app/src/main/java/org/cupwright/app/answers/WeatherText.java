package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.cupwright.app.desk.weather.ListWeather;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSource;

/** What weather rests on, in words. */
public record WeatherText(Texts texts) {
    private static final int DAY_WIDTH = 17;
    private static final int NUMBER_WIDTH = 9;

    /** The weather day by day, and what it rests on. */
    public Lines list(ListWeather.Answer answer) {
        Lines lines = new Lines(texts);
        WeatherBasis basis = answer.basis();
        lines.say("weather.list.title", answer.course().name(), texts.day(basis.first()), texts.day(basis.last()));
        row(
                lines,
                "",
                "",
                Stream.of("highest", "lowest", "rain", "wind").map(head -> texts.say("weather.list." + head)));
        answer.days().forEach(day -> row(lines, day));
        lines.say("weather.list.counts", counts(basis));
        return answer.gaps() > 0 ? lines.say("weather.list.gaps", answer.gaps()) : lines;
    }

    private void row(Lines lines, ListWeather.Day day) {
        Optional<WeatherDay> known = day.known().map(KnownWeather::weather);
        WeatherSource source = day.known().map(KnownWeather::source).orElse(WeatherSource.ASSUMED);
        Stream<Optional<String>> numbers = Stream.of(
                known.map(weather -> texts.number(weather.highestCelsius(), 1)),
                known.map(weather -> texts.number(weather.lowestCelsius(), 1)),
                known.flatMap(WeatherDay::rain)
                        .map(rain ->
                                rain.trace() ? texts.say("weather.list.trace") : texts.number(rain.millimetres(), 1)),
                known.map(WeatherDay::windMetresPerSecond)
                        .filter(OptionalDouble::isPresent)
                        .map(wind -> texts.number(wind.getAsDouble(), 1)));
        String rests = texts.say("weather.source." + EnumNames.lowerCamel(source));
        row(lines, texts.day(day.day()), "  " + rests, numbers.map(number -> number.orElse("–")));
    }

    private static void row(Lines lines, String day, String source, Stream<String> numbers) {
        Stream<Line.Cell> columns = numbers.map(number -> Line.right(number, NUMBER_WIDTH));
        lines.row(Stream.concat(Stream.of(Line.left(day, DAY_WIDTH)), columns).toList(), source);
    }

    /** How many days of a stretch rest on what. */
    public String basis(WeatherBasis basis) {
        return texts.say("weather.basis", basis.all(), texts.day(basis.last()), counts(basis));
    }

    /** The same without the stretch. */
    private String counts(WeatherBasis basis) {
        List<String> parts = new ArrayList<>();
        basis.days().forEach((source, days) -> {
            if (days > 0) {
                parts.add(texts.say("weather.days." + EnumNames.lowerCamel(source), days));
            }
        });
        return String.join(", ", parts);
    }
}
