package org.cupwright.app.cli.people;

import java.security.SecureRandom;
import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.people.Invite;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.session.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lets somebody in. */
@Command(name = "invite", description = "Makes a one-time code by which somebody gets an account, or another password.")
final class PeopleInviteCommand extends CourseCommand {
    @Parameters(paramLabel = "NAME", description = "The name as it is to stand beside entries.")
    private String name;

    @Option(
            names = "--role",
            paramLabel = "ROLE",
            required = true,
            description = "superintendent, official, changer or reader.")
    private Role role;

    @Override
    protected void run(Task task) {
        NewCode made = new Invite(task.session(), new SecureRandom()).person(name, role);
        task.answer(
                () -> new PeopleJson(task.texts()).invited(made),
                () -> new PeopleText(task.texts(), task.zone()).invited(made));
    }
}
