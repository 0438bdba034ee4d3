package org.cupwright.app.cli.turf;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.cupwright.app.answers.TakenInText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.weather.ImportWeather;
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
        task.answer(answer, () -> new TakenInText(task.texts()).weather(answer));
    }

    private String person() {
        return person == null ? (forecast ? "forecast" : "weather table") : person;
    }
}
