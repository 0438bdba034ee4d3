package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.paper.PrepareSheets;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.policy.EnumNames;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tools.jackson.databind.node.ObjectNode;

/** Prints a day's plan on paper. */
@Command(
        name = "sheets",
        description =
                "Writes the day's paper: the hole location sheet and the changer's card, as PDF, from the day's plan.")
public final class SheetsCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder for hole-locations.pdf and changers-card.pdf; it is made when it is not there.")
    private Path out;

    @Override
    protected void run(Task task) {
        PrepareSheets prepare = new PrepareSheets(task.session());
        DayPaper paper = prepare.of(day.question(task.options()), task.progress());
        List<Path> files = new DayPaperFiles(task.texts()).write(paper, out);
        if (task.options().json()) {
            task.print(Json.document(json(paper, files)));
        } else {
            files.forEach(file -> task.print(task.texts().say("sheets.written", file)));
        }
    }

    private static ObjectNode json(DayPaper paper, List<Path> files) {
        ObjectNode node = Json.object();
        node.put("course", paper.plan().courseId());
        node.put("date", paper.plan().date().toString());
        node.put("state", EnumNames.lowerCamel(paper.plan().state()));
        CutSoFar soFar = paper.soFar();
        node.set("asCutAt", Json.text(soFar.last().filter(time -> soFar.all()).map(LocalTime::toString)));
        node.set("cut", Json.texts(soFar.holes()));
        node.set("files", Json.texts(files.stream().map(Path::toString).toList()));
        return node;
    }
}
