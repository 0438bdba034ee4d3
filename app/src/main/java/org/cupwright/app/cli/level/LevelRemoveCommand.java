package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Takes a reading back. */
@Command(name = "remove", description = "Takes a reading back, by the number level list gives it.")
final class LevelRemoveCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LevelCommand level;

    @Mixin
    private DayOptions day;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Option(names = "--number", paramLabel = "N", required = true, description = "The reading's number on its green.")
    private int number;

    LevelRemoveCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = level.options();
        Task task = new Task(options, surroundings);
        KeepLevelReading keep = new KeepLevelReading(task.folder(), surroundings.clock());
        new LevelPrint(task).takenBack(keep.remove(day.question(options), hole, number));
    }
}
