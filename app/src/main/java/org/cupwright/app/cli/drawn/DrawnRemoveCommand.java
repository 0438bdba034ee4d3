package org.cupwright.app.cli.drawn;

import org.cupwright.app.answers.DrawnText;
import org.cupwright.app.answers.json.DrawnJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.drawn.KeepDrawn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Takes back what is kept of a spot or of ground. */
@Command(name = "remove", description = "Takes back what was drawn or named, by the id that drawn list shows.")
final class DrawnRemoveCommand extends CourseCommand {
    @Option(names = "--id", paramLabel = "ID", required = true, description = "What it is called, as 7-bad-1.")
    private String id;

    @Override
    protected void run(Task task) {
        KeepDrawn.Answer answer = new KeepDrawn(task.session()).remove(task.question(), id);
        task.answer(
                () -> new DrawnJson(answer.day(), task.texts()).of(answer),
                () -> new DrawnText(task.texts(), answer.day()).takenBack(answer));
    }
}
