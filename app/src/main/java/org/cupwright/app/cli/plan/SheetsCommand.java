package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DayPaperFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints a day's plan on paper. */
@Command(
        name = "sheets",
        description =
                "Writes the day's paper: the hole location sheet and the changer's card, as PDF, from the day's plan.")
public final class SheetsCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Mixin
    private OutOption out;

    @Override
    protected void run(Task task) {
        DayPaperFiles papers = new DayPaperFiles(task.texts(), task.folder());
        papers.check(out.folder());
        PrepareSheets prepare = new PrepareSheets(task.session());
        DayPaper paper = prepare.of(task.question(day), task.progress());
        List<Path> files = papers.write(paper, out.folder());
        task.answer(() -> PlanJson.paper(paper, files, task.texts()), () -> new PlanText(task.texts()).written(files));
    }
}
