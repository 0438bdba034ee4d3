package org.cupwright.app.cli.drawn;

import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.drawn.KeepDrawn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes back what is kept of a spot or of ground. */
@Command(name = "remove", description = "Takes back what was drawn or named, by the id that drawn list shows.")
final class DrawnRemoveCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Option(names = "--id", paramLabel = "ID", required = true, description = "What it is called, as 7-bad-1.")
    private String id;

    @Override
    protected void run(Task task) {
        KeepDrawn keep = new KeepDrawn(task.session());
        new DrawnPrint(task).takenBack(keep.remove(day.question(task.options()), id));
    }
}
