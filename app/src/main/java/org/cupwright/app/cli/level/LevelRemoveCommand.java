package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a reading back. */
@Command(name = "remove", description = "Takes a reading back, by the id that level list shows.")
final class LevelRemoveCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Option(
            names = "--id",
            paramLabel = "ID",
            required = true,
            description = "Its id, or as much of its beginning as no other has.")
    private String id;

    @Mixin
    private HolesOption holes;

    @Override
    protected void run(Task task) {
        KeepLevelReading keep = new KeepLevelReading(task.session());
        new LevelPrint(task).takenBack(keep.remove(day.question(task.options()), id, holes.named()));
    }
}
