package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** What the level has read. */
@Command(name = "list", description = "Lists what the level has read, beside what is known without it.")
final class LevelListCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LevelCommand level;

    @Mixin
    private DayOptions day;

    @Mixin
    private HolesOption holes;

    LevelListCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = level.options();
        Task task = new Task(options, surroundings);
        KeepLevelReading keep = new KeepLevelReading(task.folder(), surroundings.clock());
        new LevelPrint(task).list(keep.list(day.question(options), holes.named()));
    }
}
