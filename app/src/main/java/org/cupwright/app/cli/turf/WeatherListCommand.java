package org.cupwright.app.cli.turf;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.WeatherJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.weather.ListWeather;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the weather day by day. */
@Command(
        name = "list",
        description = "Shows the weather of each day and what it rests on. Default: two weeks up to today, "
                + "and the days that are foretold.")
final class WeatherListCommand extends CourseCommand {
    private static final int DAY = 17;
    private static final int NUMBER = 9;

    @Option(names = "--from", paramLabel = "D", description = "The first day.")
    private LocalDate from;

    @Option(names = "--to", paramLabel = "D", description = "The last day.")
    private LocalDate to;

    @Override
    protected void run(Task task) {
        ListWeather.Answer answer =
                new ListWeather(task.session()).of(Optional.ofNullable(from), Optional.ofNullable(to));
        if (task.options().json()) {
            task.print(Json.document(new WeatherJson(task.texts()).list(answer)));
        } else {
            page(task, answer);
        }
    }

    private static void page(Task task, ListWeather.Answer answer) {
        Texts texts = task.texts();
        task.print(texts.say(
                "weather.list.title",
                answer.course().name(),
                texts.day(answer.basis().first()),
                texts.day(answer.basis().last())));
        task.print(row(
                "",
                texts.say("weather.list.highest"),
                texts.say("weather.list.lowest"),
                texts.say("weather.list.rain"),
                texts.say("weather.list.wind"),
                ""));
        answer.days().forEach(day -> task.print(row(texts, day)));
        task.print(texts.say("weather.list.counts", new WeatherText(texts).counts(answer.basis())));
        if (answer.gaps() > 0) {
            task.print(texts.say("weather.list.gaps", answer.gaps()));
        }
    }

    private static String row(Texts texts, ListWeather.Day day) {
        Optional<WeatherDay> known = day.known().map(KnownWeather::weather);
        String unknown = "–";
        return row(
                texts.day(day.day()),
                known.map(weather -> texts.number(weather.highestCelsius(), 1)).orElse(unknown),
                known.map(weather -> texts.number(weather.lowestCelsius(), 1)).orElse(unknown),
                known.flatMap(WeatherDay::rain)
                        .map(rain ->
                                rain.trace() ? texts.say("weather.list.trace") : texts.number(rain.millimetres(), 1))
                        .orElse(unknown),
                known.map(WeatherDay::windMetresPerSecond)
                        .filter(OptionalDouble::isPresent)
                        .map(wind -> texts.number(wind.getAsDouble(), 1))
                        .orElse(unknown),
                texts.say("weather.source." + source(day)));
    }

    private static String row(String day, String highest, String lowest, String rain, String wind, String source) {
        String numbers = Layout.right(highest, NUMBER)
                + Layout.right(lowest, NUMBER)
                + Layout.right(rain, NUMBER)
                + Layout.right(wind, NUMBER);
        return (Layout.left(day, DAY) + numbers + "  " + source).stripTrailing();
    }

    private static String source(ListWeather.Day day) {
        return EnumNames.lowerCamel(day.known().map(KnownWeather::source).orElse(WeatherSource.ASSUMED));
    }
}
