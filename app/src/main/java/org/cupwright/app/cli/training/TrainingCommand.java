package org.cupwright.app.cli.training;

import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.ShowTraining;
import picocli.CommandLine.Command;

/** Who may do what of the hand work; without a further word it lists everybody. */
@Command(
        name = "training",
        description = "Lists who is signed off for which steps of the hand work, and signs people off.",
        subcommands = {
            TrainingListCommand.class,
            TrainingSignOffCommand.class,
            TrainingWithdrawCommand.class,
            TrainingCorrectCommand.class,
            TrainingTrainerCommand.class
        })
public final class TrainingCommand extends CourseCommand {
    @Override
    protected void run(Task task) {
        everybody(task);
    }

    static void everybody(Task task) {
        ShowTraining.All all = new ShowTraining(task.session()).all();
        task.answer(
                () -> new TrainingJson(task.texts()).list(all),
                () -> new TrainingText(task.texts(), all.zone()).list(all));
    }
}
