package org.cupwright.app.cli.people;

import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.ChangeRole;
import org.cupwright.app.session.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes somebody something else. */
@Command(name = "role", description = "Says what somebody is: superintendent, official, changer or reader.")
final class PeopleRoleCommand extends CourseCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "Who.")
    private String name;

    @Parameters(index = "1", paramLabel = "ROLE", description = "superintendent, official, changer or reader.")
    private Role role;

    @Override
    protected void run(Task task) {
        Account account = new ChangeRole(task.session()).of(name, role);
        task.answer(
                () -> new PeopleJson(task.texts()).account(account),
                () -> new PeopleText(task.texts(), task.zone()).role(account));
    }
}
