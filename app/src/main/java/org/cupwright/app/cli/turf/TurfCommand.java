package org.cupwright.app.cli.turf;

import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.turf.ShowTurf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows the turf of a day. */
@Command(
        name = "turf",
        description = "Shows what rests, which plugs want water or a look, and what the cutters ask for.")
public final class TurfCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Override
    protected void run(Task task) {
        new TurfPrint(task).print(new ShowTurf(task.session()).of(day.question(task.options())));
    }
}
