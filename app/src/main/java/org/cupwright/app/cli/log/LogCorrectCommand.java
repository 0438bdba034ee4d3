package org.cupwright.app.cli.log;

import java.util.Optional;
import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.CorrectFact.Change;
import org.cupwright.app.desk.entry.Says;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts an entry right. */
@Command(
        name = "correct",
        description = "Says what an entry should have said; what is not named stays. The entry itself is not changed.")
final class LogCorrectCommand extends CourseCommand {
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

    @Override
    protected void run(Task task) {
        Optional<Says> says = TypedEntry.change(entry.parts(), place.find(), entry.radiusMetres());
        Change change = new Change(id, Optional.ofNullable(hole), says, entry.sure());
        CorrectFact.Answer answer = new CorrectFact(task.session(person)).correct(change);
        task.answer(answer, () -> new LogText(task.texts()).corrected(answer));
    }
}
