package org.cupwright.app.cli.plan;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.survey.FindingsCommand;
import org.cupwright.app.desk.plan.ExplainHole;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Says on one page why a hole was where it was. */
@Command(
        name = "explain",
        description = "Says on one page why a hole is, or was, where it is on a day: the plan, who cut it, the rules.")
public final class ExplainCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    public ExplainCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        ExplainHole explain = new ExplainHole(task.folder(), surroundings.clock());
        new ExplainPrint(task).print(explain.of(FindingsCommand.question(options), hole));
    }
}
