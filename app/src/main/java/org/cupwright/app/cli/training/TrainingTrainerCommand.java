package org.cupwright.app.cli.training;

import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.storage.training.TrainingRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says who may sign others off. */
@Command(name = "trainer", description = "Names a changer who may sign others off, or ends that.")
final class TrainingTrainerCommand extends CourseCommand {
    @Parameters(paramLabel = "NAME", description = "Who; a changer with an account.")
    private String name;

    @Option(names = "--end", description = "From now on no more.")
    private boolean end;

    @Override
    protected void run(Task task) {
        TrainingRecord record = new SignOff(task.session()).trainer(name, !end);
        task.answer(
                () -> new TrainingJson(task.texts()).record(record),
                () -> new TrainingText(task.texts(), task.zone()).trainer(record));
    }
}
