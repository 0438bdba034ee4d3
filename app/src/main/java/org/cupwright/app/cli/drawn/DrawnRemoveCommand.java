package org.cupwright.app.cli.drawn;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.drawn.KeepDrawn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Takes back what is kept of a spot or of ground. */
@Command(name = "remove", description = "Takes back what was drawn or named, by the id that drawn list shows.")
final class DrawnRemoveCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private DrawnCommand drawn;

    @Mixin
    private DayOptions day;

    @Option(names = "--id", paramLabel = "ID", required = true, description = "What it is called, as 7-bad-1.")
    private String id;

    DrawnRemoveCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = drawn.options();
        Task task = new Task(options, surroundings);
        KeepDrawn keep = new KeepDrawn(task.folder(), surroundings.clock());
        new DrawnPrint(task).takenBack(keep.remove(day.question(options), id));
    }
}
