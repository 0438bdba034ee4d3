package org.cupwright.app.cli.log;

import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.CorrectFact.Change;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts an entry right. */
@Command(
        name = "correct",
        description = "Says what an entry should have said; what is not named stays. The entry itself is not changed.")
final class LogCorrectCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Parameters(paramLabel = "ID", description = "The entry, by the beginning of its id; log list shows it.")
    private String id;

    @Option(names = "--hole", paramLabel = "H", description = "The hole it should have named.")
    private String hole;

    @Mixin
    private SpotOptions place;

    @Mixin
    private PersonOption person;

    @Mixin
    private EntryOptions entry;

    LogCorrectCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = log.options();
        Task task = new Task(options, surroundings);
        Change change = new Change(
                options.course(),
                id,
                Optional.ofNullable(hole),
                place.find(),
                entry.radiusMetres(),
                entry.parts(),
                person.name(),
                entry.sure());
        CorrectFact correct = new CorrectFact(task.folder(), surroundings.clock(), UUID::randomUUID);
        new LogPrint(task).corrected(correct.correct(change));
    }
}
