package org.cupwright.app.cli.survey;

import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.resurvey.ListSurveys;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** The surveys that are kept. */
@Command(name = "list", description = "Lists the surveys that are kept of each green; the newest counts.")
final class SurveyListCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private SurveyCommand survey;

    @Mixin
    private HolesOption holes;

    SurveyListCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = survey.options();
        Task task = new Task(options, surroundings);
        ListSurveys.Answer answer = new ListSurveys(task.folder(), surroundings.clock())
                .of(FindingsCommand.question(options), holes.named());
        SurveyListPrint print = new SurveyListPrint(task.texts(), answer);
        if (options.json()) {
            task.print(Json.document(print.json()));
        } else {
            print.page().forEach(task::print);
        }
    }
}
