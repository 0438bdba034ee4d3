package org.cupwright.app.cli.log;

import java.util.Optional;
import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.typed.EntryForm;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows entries. */
@Command(
        name = "list",
        description = "Shows the entries that count, corrections taken in. Default: the last seven days.")
final class LogListCommand extends CourseCommand {
    @Option(names = "--from", paramLabel = "D", description = "The first day.")
    private AskedDay from;

    @Option(names = "--to", paramLabel = "D", description = "The last day. Default: --date, or today.")
    private AskedDay to;

    @Option(names = "--hole", paramLabel = "H", description = "Entries of this hole only.")
    private String hole;

    @Option(names = "--kind", paramLabel = "K", description = "Entries of this kind only.")
    private String kind;

    @Override
    protected void run(Task task) {
        ListFacts.Answer answer = new ListFacts(task.session())
                .of(
                        Optional.ofNullable(from).map(task::day),
                        Optional.ofNullable(to).map(task::day).or(task::date),
                        Optional.ofNullable(hole),
                        Optional.ofNullable(kind).map(EntryForm::of).map(EntryForm::kind));
        task.answer(answer, () -> new LogText(task.texts()).list(answer));
    }
}
