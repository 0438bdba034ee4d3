package org.cupwright.app.cli.log;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.ListFacts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Shows entries. */
@Command(
        name = "list",
        description = "Shows the entries that count, corrections taken in. Default: the last seven days.")
final class LogListCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Option(names = "--from", paramLabel = "D", description = "The first day.")
    private LocalDate from;

    @Option(names = "--to", paramLabel = "D", description = "The last day. Default: --date, or today.")
    private LocalDate to;

    @Option(names = "--hole", paramLabel = "H", description = "Entries of this hole only.")
    private String hole;

    @Option(names = "--kind", paramLabel = "K", description = "Entries of this kind only.")
    private String kind;

    LogListCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        CupwrightCommand options = log.options();
        Task task = new Task(options, surroundings);
        ListFacts.Wanted wanted = new ListFacts.Wanted(
                options.course(),
                Optional.ofNullable(from),
                Optional.ofNullable(to).or(options::date),
                Optional.ofNullable(hole),
                Optional.ofNullable(kind));
        new LogPrint(task).list(new ListFacts(task.folder(), surroundings.clock()).of(wanted));
    }
}
