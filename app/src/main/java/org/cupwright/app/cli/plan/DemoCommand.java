package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.intake.SetUpDemo;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.session.Session;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.democourse.DemoCourse;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job on an invented course, in one command. */
@Command(
        name = "demo",
        description = "Shows the main job on an invented course: decides the day's hole locations, says why, and"
                + " writes the papers for the morning.")
public final class DemoCommand extends CourseCommand {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "Where hole-locations.pdf and changers-card.pdf are written. Default: this folder.")
    private Path out;

    @Mixin
    private DayOptions day;

    @Override
    protected void run(Task task) {
        task.options().course().filter(id -> !id.equals(DemoCourse.ID)).ifPresent(id -> {
            throw wrong("The demo has a course of its own, " + DemoCourse.ID + ".", id);
        });
        DayQuestion question = task.question(day);
        Session session = task.session().about(DemoCourse.ID);
        if (new SetUpDemo(session).ifMissing()) {
            task.err().println(task.texts().say("demo.setUp", DemoCourse.NAME));
        }
        PlanDay plan = new PlanDay(session, Version.text());
        PlanDay.Answer answer = plan.standing(question)
                .orElseGet(() -> plan.plan(question, task.options().seed(), task.progress()));
        List<Path> papers =
                new DayPaperFiles(task.texts(), task.folder()).write(paper(answer, question, session, task), out);
        PlanCommand.answer(task, answer);
        if (!task.options().json()) {
            task.print("");
            Layout.set(new PlanText(task.texts()).written(papers)).forEach(task::print);
        }
    }

    /** A plan that stood already was not judged anew; its paper needs the greens all the same. */
    private DayPaper paper(PlanDay.Answer answer, DayQuestion question, Session session, Task task) {
        return answer.paper().orElseGet(() -> new PrepareSheets(session).of(question, task.progress()));
    }
}
