package org.cupwright.app.cli.people;

import java.util.Optional;
import org.cupwright.app.answers.AuditText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.people.ListAudit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Who changed what. */
@Command(name = "audit", description = "Lists who changed settings, people and published plans, and when.")
final class PeopleAuditCommand extends CourseCommand {
    @Option(names = "--from", paramLabel = "D", description = "The first day. Default: from the beginning.")
    private AskedDay from;

    @Option(names = "--to", paramLabel = "D", description = "The last day. Default: up to now.")
    private AskedDay to;

    @Override
    protected void run(Task task) {
        ListAudit.Trail trail = new ListAudit(task.session())
                .between(
                        Optional.ofNullable(from).map(task::day),
                        Optional.ofNullable(to).map(task::day));
        task.answer(() -> new PeopleJson(task.texts()).audit(trail), () -> new AuditText(task.texts()).list(trail));
    }
}
