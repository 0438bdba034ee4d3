package org.cupwright.app.cli.plan;

import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.ProgressLine;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.desk.plan.PlanDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Decides the hole locations of a day. */
@Command(name = "plan", description = "Decides the day's hole locations, says why, and keeps them as a draft.")
public final class PlanCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    @Mixin
    private DayOptions day;

    @Option(names = "--days", paramLabel = "K", defaultValue = "1", description = "How many days; for now one.")
    private int days;

    public PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        if (days != 1) {
            throw new Arguments(spec).wrong("--days takes 1 in this version, not " + days + ".", "" + days);
        }
        Task task = new Task(options, surroundings);
        PlanDay plan = new PlanDay(task.folder(), surroundings.clock(), Version.text());
        PlanDay.Answer answer = plan.plan(day.question(options), options.seed(), new ProgressLine(task));
        new PlanPrint(task).print(answer);
    }
}
