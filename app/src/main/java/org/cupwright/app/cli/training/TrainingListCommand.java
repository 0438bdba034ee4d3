package org.cupwright.app.cli.training;

import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.ShowTraining;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everybody by skills, or one person with all that was written down. */
@Command(name = "list", description = "Lists everybody by skills, or all records of one person.")
final class TrainingListCommand extends CourseCommand {
    @Parameters(paramLabel = "NAME", arity = "0..1", description = "Whose records. Default: everybody by skills.")
    private String name;

    @Override
    protected void run(Task task) {
        if (name == null) {
            TrainingCommand.everybody(task);
            return;
        }
        ShowTraining.History history = new ShowTraining(task.session()).person(name);
        task.answer(
                () -> new TrainingJson(task.texts()).history(history),
                () -> new TrainingText(task.texts(), history.zone()).history(history));
    }
}
