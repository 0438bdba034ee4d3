package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a reading back. */
@Command(name = "remove", description = "Takes a reading back, by the number level list gives it.")
final class LevelRemoveCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Option(names = "--number", paramLabel = "N", required = true, description = "The reading's number on its green.")
    private int number;

    @Override
    protected void run(Task task) {
        KeepLevelReading keep = new KeepLevelReading(task.session());
        new LevelPrint(task).takenBack(keep.remove(day.question(task.options()), hole, number));
    }
}
