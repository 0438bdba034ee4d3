package org.cupwright.app.cli.people;

import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.people.ListPeople;
import picocli.CommandLine.Command;

/** Who may sign in; without a further word it lists them. */
@Command(
        name = "people",
        description = "Lists who may sign in to the office, and lets people in and out.",
        subcommands = {
            PeopleInviteCommand.class,
            PeopleRoleCommand.class,
            PeopleRemoveCommand.class,
            PeopleEraseCommand.class,
            PeopleAuditCommand.class
        })
public final class PeopleCommand extends CourseCommand {
    @Override
    protected void run(Task task) {
        ListPeople.Everybody all = new ListPeople(task.session()).all();
        task.answer(
                () -> new PeopleJson(task.texts()).list(all),
                () -> new PeopleText(task.texts(), task.zone()).list(all));
    }
}
