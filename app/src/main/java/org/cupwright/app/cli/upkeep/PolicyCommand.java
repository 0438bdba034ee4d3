package org.cupwright.app.cli.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.policy.PolicyCatalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Shows or sets what depends on the course. */
@Command(
        name = "policy",
        description = "Shows the settings with their sources; KEY shows one, KEY=VALUE sets it from --date on.")
public final class PolicyCommand implements Runnable {
    private final Surroundings surroundings;
    private final PolicyCatalogue catalogue = Settings.catalogue();

    @ParentCommand
    private CupwrightCommand options;

    @Parameters(paramLabel = "KEY[=VALUE]", arity = "0..*", description = "Settings to show or to set.")
    private List<String> given = new ArrayList<>();

    public PolicyCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        LocalDate day = task.day();
        List<Wanted> wanted = given.stream()
                .filter(text -> text.contains("="))
                .map(text -> new Wanted(key(text), text.substring(text.indexOf('=') + 1)))
                .toList();
        if (!wanted.isEmpty()) {
            new ChangePolicy(task.folder(), catalogue).set(options.course(), day, wanted);
        }
        PolicyPrint print = new PolicyPrint(task.texts(), day);
        task.print(options.json() ? Json.document(print.json(entries(task, day))) : print.page(entries(task, day)));
    }

    private List<PolicyEntry> entries(Task task, LocalDate day) {
        ShowPolicy show = new ShowPolicy(task.folder(), catalogue);
        if (given.isEmpty()) {
            return show.all(options.course(), day);
        }
        return given.stream()
                .map(text -> show.one(options.course(), day, key(text)))
                .toList();
    }

    private static String key(String given) {
        int equals = given.indexOf('=');
        return equals < 0 ? given : given.substring(0, equals);
    }
}
