package org.cupwright.app.cli.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.UpkeepJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.policy.PolicyCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows or sets what depends on the course. */
@Command(
        name = "policy",
        description = "Shows the settings that a course decides first; KEY shows one with its source, KEY=VALUE sets it"
                + " from --date on.")
public final class PolicyCommand extends CourseCommand {
    private final PolicyCatalogue catalogue = Settings.catalogue();

    @Parameters(paramLabel = "KEY[=VALUE]", arity = "0..*", description = "Settings to show or to set.")
    private List<String> given = new ArrayList<>();

    @Option(names = "--all", description = "Every setting with its source, not only those that are decided first.")
    private boolean all;

    @Override
    protected void run(Task task) {
        LocalDate day = task.day();
        List<Wanted> wanted = given.stream()
                .filter(text -> text.contains("="))
                .map(text -> new Wanted(key(text), text.substring(text.indexOf('=') + 1)))
                .toList();
        if (!wanted.isEmpty()) {
            new ChangePolicy(task.session(), catalogue).set(day, wanted);
        }
        if (given.isEmpty() && !all && !task.options().json()) {
            List<PolicyEntry> first = new ShowPolicy(task.session(), catalogue).first(day);
            int others = catalogue.settings().size() - first.size();
            task.print(new PolicyPrint(task.texts(), day).first(first, others));
            return;
        }
        List<PolicyEntry> entries = entries(task, day);
        task.print(
                task.options().json()
                        ? Json.document(new UpkeepJson(task.texts()).settings(day, entries))
                        : new PolicyPrint(task.texts(), day).page(entries));
    }

    private List<PolicyEntry> entries(Task task, LocalDate day) {
        ShowPolicy show = new ShowPolicy(task.session(), catalogue);
        if (given.isEmpty()) {
            return show.all(day);
        }
        return given.stream().map(text -> show.one(day, key(text))).toList();
    }

    private static String key(String given) {
        int equals = given.indexOf('=');
        return equals < 0 ? given : given.substring(0, equals);
    }
}
