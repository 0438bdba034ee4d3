package org.cupwright.app.cli.log;

import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes an entry back. */
@Command(
        name = "withdraw",
        description = "Says that an entry should not be there; it stays on record but no longer counts.")
final class LogWithdrawCommand extends CourseCommand {
    @Parameters(paramLabel = "ID", description = "The entry, by the beginning of its id; log list shows it.")
    private String id;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        CorrectFact.Answer answer = new CorrectFact(task.session(person)).withdraw(id);
        task.answer(answer, () -> new LogText(task.texts()).corrected(answer));
    }
}
