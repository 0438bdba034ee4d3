package org.cupwright.app.cli.log;

import java.util.UUID;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.SeeToOdd;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says that something odd is being seen to. */
@Command(
        name = "seen",
        description = "Says that something odd has been read of and is being seen to; turf lists it no more.")
final class LogSeenCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Parameters(paramLabel = "ID", description = "The entry, by the beginning of its id; turf and log list show it.")
    private String id;

    @Mixin
    private PersonOption person;

    LogSeenCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = log.options();
        Task task = new Task(options, surroundings);
        SeeToOdd things = new SeeToOdd(task.folder(), surroundings.clock(), UUID::randomUUID);
        new LogPrint(task).kept(things.seen(options.course(), id, person.name()));
    }
}
