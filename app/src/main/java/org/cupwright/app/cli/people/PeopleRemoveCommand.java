package org.cupwright.app.cli.people;

import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.Deactivate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lets somebody sign in no more. */
@Command(name = "remove", description = "Lets somebody sign in no more; the name stays beside what the person wrote.")
final class PeopleRemoveCommand extends CourseCommand {
    @Parameters(paramLabel = "NAME", description = "Who.")
    private String name;

    @Override
    protected void run(Task task) {
        Account account = new Deactivate(task.session()).person(name);
        task.answer(
                () -> new PeopleJson(task.texts()).account(account),
                () -> new PeopleText(task.texts(), task.zone()).removed(account));
    }
}
