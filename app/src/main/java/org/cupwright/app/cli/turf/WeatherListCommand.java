package org.cupwright.app.cli.turf;

import java.util.Optional;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.answers.json.WeatherJson;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.weather.ListWeather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the weather day by day. */
@Command(
        name = "list",
        description = "Shows the weather of each day and what it rests on. Default: two weeks up to today or --date, "
                + "and, without a date, the days that are foretold.")
final class WeatherListCommand extends CourseCommand {
    @Option(names = "--from", paramLabel = "D", description = "The first day.")
    private AskedDay from;

    @Option(names = "--to", paramLabel = "D", description = "The last day.")
    private AskedDay to;

    @Override
    protected void run(Task task) {
        ListWeather.Answer answer = new ListWeather(task.session())
                .of(
                        Optional.ofNullable(from).map(task::day),
                        Optional.ofNullable(to)
                                .map(task::day)
                                .or(() -> task.question().date()));
        task.answer(() -> new WeatherJson(task.texts()).list(answer), () -> new WeatherText(task.texts()).list(answer));
    }
}
