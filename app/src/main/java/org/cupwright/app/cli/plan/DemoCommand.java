package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.ProgressLine;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.intake.SetUpDemo;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.democourse.DemoCourse;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The main job on an invented course, in one command. */
@Command(
        name = "demo",
        description = "Shows the main job on an invented course: decides the day's hole locations, says why, and"
                + " writes the papers for the morning.")
public final class DemoCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "Where hole-locations.pdf and changers-card.pdf are written. Default: this folder.")
    private Path out;

    @Mixin
    private DayOptions day;

    public DemoCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        DayQuestion question = question();
        if (new SetUpDemo(task.folder()).ifMissing()) {
            surroundings.err().println(task.texts().say("demo.setUp", DemoCourse.NAME));
        }
        PlanDay plan = new PlanDay(task.folder(), surroundings.clock(), Version.text());
        PlanDay.Answer answer =
                plan.standing(question).orElseGet(() -> plan.plan(question, options.seed(), new ProgressLine(task)));
        List<Path> papers = new DayPaperFiles(task.texts()).write(paper(answer, question, task), out);
        new PlanPrint(task).print(answer);
        if (!options.json()) {
            task.print("");
            papers.forEach(file -> task.print(task.texts().say("sheets.written", file)));
        }
    }

    /** A plan that stood already was not judged anew; its paper needs the greens all the same. */
    private DayPaper paper(PlanDay.Answer answer, DayQuestion question, Task task) {
        return answer.paper()
                .orElseGet(() ->
                        new PrepareSheets(task.folder(), surroundings.clock()).of(question, new ProgressLine(task)));
    }

    private DayQuestion question() {
        options.course().filter(id -> !id.equals(DemoCourse.ID)).ifPresent(id -> {
            throw new Arguments(spec).wrong("The demo has a course of its own, " + DemoCourse.ID + ".", id);
        });
        return day.question(options).about(DemoCourse.ID);
    }
}
