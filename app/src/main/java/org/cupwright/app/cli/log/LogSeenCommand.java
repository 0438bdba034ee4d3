package org.cupwright.app.cli.log;

import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.SeeToOdd;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says that something odd is being seen to. */
@Command(
        name = "seen",
        description = "Says that something odd has been read of and is being seen to; turf lists it no more.")
final class LogSeenCommand extends CourseCommand {
    @Parameters(paramLabel = "ID", description = "The entry, by the beginning of its id; turf and log list show it.")
    private String id;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        RecordFact.Answer answer = new SeeToOdd(task.session(person)).seen(id);
        task.answer(answer, () -> new LogText(task.texts()).kept(answer));
    }
}
