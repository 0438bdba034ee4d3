package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.cli.command.YesOption;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The daily job in one command: the plan looked at, published and printed. */
@Command(
        name = "morning",
        description = "Shows what to know first and the day's plan, which is made if there is none; asks once,"
                + " then publishes it and writes the papers. What is published already is printed again.")
public final class MorningCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Mixin
    private OutOption out;

    @Mixin
    private YesOption yes;

    @Override
    protected void run(Task task) {
        DayPaperFiles papers = new DayPaperFiles(task.texts(), task.folder());
        papers.check(out.folder());
        DayQuestion question = task.question(day);
        PlanDay plan = new PlanDay(task.session(), Version.text());
        PlanDay.Answer answer = plan.standing(question)
                .orElseGet(() -> plan.plan(question, task.options().seed(), task.progress()));
        if (!task.options().json()) {
            PlanCommand.answer(task, answer);
            task.print("");
        }
        if (answer.plan().state() == State.DRAFT) {
            if (!yes.agreed(task, question(task, answer.plan()))) {
                task.print(task.texts().say("morning.left"));
                return;
            }
            new PublishPlan(task.session()).publish(answer.plan());
        }
        DayPaper paper = new PrepareSheets(task.session()).of(question, task.progress());
        List<Path> files = papers.write(paper, out.folder());
        task.answer(() -> PlanJson.paper(paper, files, task.texts()), () -> new PlanText(task.texts()).written(files));
    }

    /** What is asked; two holes of one green that are near each other are named once more. */
    private String question(Task task, StoredPlan plan) {
        Texts texts = task.texts();
        String asks = texts.say("morning.asks", texts.day(plan.date()), out.folder());
        return PublishPlan.nearOnSharedGreens(plan)
                .map(near -> texts.say(near) + " " + asks)
                .orElse(asks);
    }
}
