package org.cupwright.app.cli.log;

import java.util.UUID;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Takes an entry back. */
@Command(
        name = "withdraw",
        description = "Says that an entry should not be there; it stays on record but no longer counts.")
final class LogWithdrawCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Parameters(paramLabel = "ID", description = "The entry, by the beginning of its id; log list shows it.")
    private String id;

    @Mixin
    private PersonOption person;

    LogWithdrawCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = log.options();
        Task task = new Task(options, surroundings);
        CorrectFact correct = new CorrectFact(task.folder(), surroundings.clock(), UUID::randomUUID);
        new LogPrint(task).corrected(correct.withdraw(options.course(), id, person.name()));
    }
}
