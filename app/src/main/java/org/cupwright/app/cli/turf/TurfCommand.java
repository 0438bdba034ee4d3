package org.cupwright.app.cli.turf;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.turf.ShowTurf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** Shows the turf of a day. */
@Command(
        name = "turf",
        description = "Shows what rests, which plugs want water or a look, and what the cutters ask for.")
public final class TurfCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Mixin
    private DayOptions day;

    public TurfCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        new TurfPrint(task).print(new ShowTurf(task.folder(), surroundings.clock()).of(day.question(options)));
    }
}
