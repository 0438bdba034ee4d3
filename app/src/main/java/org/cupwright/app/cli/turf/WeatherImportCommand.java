package org.cupwright.app.cli.turf;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.NotReadPrint;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.weather.ImportWeather;
import org.cupwright.app.texts.Texts;
import org.cupwright.formats.table.Question;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes in a table of weather. */
@Command(
        name = "import",
        description = {
            "Reads a table of past days' weather, or with --forecast of coming days', one line a day, "
                    + "and says what reads; --yes keeps it.",
            "The first line names the columns: date, tmax and tmin; rain, wind, rhmax, rhmin, sunshine, "
                    + "radiation, dewpoint and vapourpressure where they are known."
        })
final class WeatherImportCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The table, CSV.")
    private Path file;

    @Option(
            names = "--column",
            paramLabel = "WHAT=NAME",
            description = "What the table calls a column, as tmax=Hi; repeatable. Usual names are known.")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(
            names = "--unit",
            paramLabel = "WHAT=UNIT",
            description = "The unit of a column, as tmax=F or rain=in; repeatable. Default: "
                    + "as the column's name says, else C, mm, m/s, min, MJ/m2, kPa.")
    private Map<String, String> units = new LinkedHashMap<>();

    @Option(names = "--forecast", description = "The table foretells today and coming days.")
    private boolean forecast;

    @Option(
            names = "--accept",
            paramLabel = "WHAT",
            split = ",",
            description = "What the dry run asks about and is right all the same: tmax, rain, wind, "
                    + "sunshine, radiation, seasons or days; repeatable.")
    private Set<String> accepted = new LinkedHashSet<>();

    @Option(names = "--yes", description = "Keep the lines that read.")
    private boolean keep;

    @Option(
            names = "--person",
            paramLabel = "NAME",
            description = "Who is named for it. Default: weather table, or forecast.")
    private String person;

    @Override
    protected void run(Task task) {
        SourceFile source = SourceFile.at(file);
        ImportWeather.Answer answer = new ImportWeather(task.session().by(person()))
                .read(new ImportWeather.Request(source, forecast, columns, units, accepted, keep));
        if (task.options().json()) {
            task.print(Json.document(new Shapes(task.texts()).tree(answer)));
        } else {
            page(task, answer);
        }
    }

    private String person() {
        return person == null ? (forecast ? "forecast" : "weather table") : person;
    }

    private static void page(Task task, ImportWeather.Answer answer) {
        Texts texts = task.texts();
        boolean forecast = answer.forecast();
        say(
                task,
                texts.say(
                        forecast ? "weather.forecastReads" : "weather.reads",
                        answer.course().name(),
                        answer.read(),
                        answer.first().map(texts::day).orElse("–"),
                        answer.last().map(texts::day).orElse("–")));
        say(task, texts.say("weather.units", units(answer)));
        if (answer.missing() > 0) {
            say(task, texts.say(forecast ? "weather.forecastMissing" : "weather.missing", answer.missing()));
        }
        if (answer.noRain() > 0 && !forecast) {
            say(task, texts.say("weather.noRain", answer.noRain()));
        }
        NotReadPrint.print(task, answer.notRead());
        answer.unended().ifPresent(line -> say(task, texts.say("table.unended", line)));
        String kept = forecast ? "weather.forecastKept" : "weather.kept";
        String would = forecast ? "weather.forecastWouldKeep" : "weather.wouldKeep";
        say(task, texts.say(answer.kept() ? kept : would, answer.added(), answer.changed(), answer.known()));
        asks(task, answer);
        if (!answer.kept()) {
            say(task, texts.say("history.dryRun"));
        }
    }

    private static void say(Task task, String sentence) {
        Layout.wrapped("", sentence).forEach(task::print);
    }

    private static void asks(Task task, ImportWeather.Answer answer) {
        Texts texts = task.texts();
        if (!answer.asks().isEmpty()) {
            task.print(texts.say("weather.asks"));
        }
        for (Question question : answer.asks()) {
            String said = texts.say(question.asks()) + " " + texts.say(question.tryThis());
            Layout.wrapped("  ", said).forEach(task::print);
        }
    }

    private static String units(ImportWeather.Answer answer) {
        return answer.units().entrySet().stream()
                .map(unit -> unit.getKey() + " " + unit.getValue())
                .collect(Collectors.joining(", "));
    }
}
