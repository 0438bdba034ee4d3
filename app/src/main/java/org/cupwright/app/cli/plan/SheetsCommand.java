package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.answers.json.WeeksPaperJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.paper.PrepareWeeks;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.WeeksPaperFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints plans on paper: a day's, or those of several days on one sheet. */
@Command(
        name = "sheets",
        description = {
            "Writes the day's paper: the hole location sheet and the changer's card, as PDF, from the day's plan.",
            "With --days K: weeks.pdf instead, a sheet of holes by days for the wall, from the plans of these days."
        })
public final class SheetsCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Mixin
    private OutOption out;

    @Mixin
    private PlanFiles files;

    @Mixin
    private PersonOption person;

    @Option(
            names = "--days",
            paramLabel = "K",
            defaultValue = "1",
            description = "How many days, from that day on; each must have a plan.")
    private int days;

    @Override
    protected void run(Task task) {
        if (days == 1) {
            day(task);
        } else {
            weeks(task);
        }
    }

    private void day(Task task) {
        if (person.isGiven()) {
            throw wrong("--person goes with --days: who had the sheet for the wall written.", person.name());
        }
        DayPaperFiles papers = new DayPaperFiles(task.texts(), task.folder());
        refuseOneForTwo(List.of(DayPaperFiles.SHEET, DayPaperFiles.CARD));
        papers.check(out.folder());
        DayPaper paper = new PrepareSheets(task.session()).of(task.question(day), task.progress());
        Map<Path, byte[]> beside = files.asked() ? files.contents(plans(task), task) : Map.of();
        List<Path> written = papers.write(paper, out.folder(), beside, files.replaces());
        task.answer(
                () -> PlanJson.paper(paper, written, task.texts()), () -> new PlanText(task.texts()).written(written));
    }

    private void weeks(Task task) {
        if (day.ground().isPresent()) {
            throw wrong("--ground is of one day: leave out --days, or it.", Integer.toString(days));
        }
        WeeksPaperFiles papers = new WeeksPaperFiles(task.texts(), task.folder());
        refuseOneForTwo(List.of(WeeksPaperFiles.WEEKS));
        papers.check(out.folder());
        WeeksPaper paper = plans(task);
        List<Path> written = papers.write(paper, out.folder(), files.contents(paper, task), files.replaces());
        task.answer(
                () -> WeeksPaperJson.of(paper, written, task.texts()),
                () -> new PlanText(task.texts()).written(written));
    }

    private WeeksPaper plans(Task task) {
        return new PrepareWeeks(person.isGiven() ? task.session(person) : task.session()).of(task.question(day), days);
    }

    private void refuseOneForTwo(List<String> papers) {
        if (files.collide(out.folder(), papers)) {
            throw wrong("Two of the files are one and the same.", "");
        }
    }
}
