package org.cupwright.app.cli.survey;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.cupwright.app.answers.SurveyChangeText;
import org.cupwright.app.answers.json.SurveyJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.Since;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What changed between two surveys. */
@Command(
        name = "compare",
        description = {
            "Says what changed on a green between its newest survey and an earlier one.",
            "  survey compare --hole 7",
            "  survey compare --hole all --since 2025-10-31"
        })
final class SurveyCompareCommand extends CourseCommand {
    @Mixin
    private HolesOption holes;

    @Option(
            names = "--since",
            paramLabel = "N|D",
            description = "The earlier survey: its number in survey list, or a day, such as 2025-10-31, at whose end it"
                    + " was the newest. Default: the one before the newest.")
    private String since;

    @Override
    protected void run(Task task) {
        Since earlier = since();
        CompareSurveys.Answer answer =
                new CompareSurveys(task.session()).of(task.question(), holes.named(), earlier, task.progress());
        task.answer(
                () -> new SurveyJson(task.texts()).changes(answer),
                () -> new SurveyChangeText(task.texts(), answer).lines());
    }

    private Since since() {
        if (since == null) {
            return new Since.Before();
        }
        if (since.matches("[1-9][0-9]{0,5}")) {
            return new Since.Version(Integer.parseInt(since));
        }
        try {
            return new Since.Day(LocalDate.parse(since));
        } catch (DateTimeParseException noDay) {
            throw wrong(
                    "--since takes a survey's number or a day, such as 2 or 2025-10-31, not '" + since + "'.", since);
        }
    }
}
