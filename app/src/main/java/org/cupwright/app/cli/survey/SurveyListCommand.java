package org.cupwright.app.cli.survey;

import org.cupwright.app.answers.SurveyText;
import org.cupwright.app.answers.json.SurveyJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.resurvey.ListSurveys;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The surveys that are kept. */
@Command(name = "list", description = "Lists the surveys that are kept of each green; the newest counts.")
final class SurveyListCommand extends CourseCommand {
    @Mixin
    private HolesOption holes;

    @Override
    protected void run(Task task) {
        ListSurveys.Answer answer = new ListSurveys(task.session()).of(task.question(), holes.named());
        task.answer(() -> new SurveyJson(task.texts()).list(answer), () -> SurveyText.list(task.texts(), answer));
    }
}
