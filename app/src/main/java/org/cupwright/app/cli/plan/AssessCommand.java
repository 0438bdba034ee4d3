package org.cupwright.app.cli.plan;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.GreenText;
import org.cupwright.app.answers.json.AssessJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.holelocation.Judgement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Judges one position with every rule, or a whole green. */
@Command(name = "assess", description = "Judges a position by every rule, or without --at and --on the whole green.")
public final class AssessCommand extends CourseCommand {
    @Mixin
    private DayOptions day;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Mixin
    private SpotOptions place;

    @Mixin
    private DrawingFiles files;

    @Override
    protected void run(Task task) {
        DayQuestion question = task.question(day);
        Optional<Spot> spot = place.find();
        if (files.collide()) {
            throw wrong("--svg, --png and --geojson each take a file of their own.", "");
        }
        AssessGreen.Answer answer = new AssessGreen(task.session()).of(question, hole, spot);
        Optional<Judgement> asked = answer.asked().map(JudgedPosition::judgement);
        files.write(answer.day(), answer.green(), findings(task), asked, task);
        task.answer(
                () -> new AssessJson(answer.day(), task.texts()).of(answer),
                () -> new GreenText(task.texts()).lines(answer));
    }

    /** What is doubtful about the ground, where it is to be drawn: the survey is fitted for it once more. */
    private List<GroundFinding> findings(Task task) {
        if (!files.drawn()) {
            return List.of();
        }
        return new FindDoubts(task.session())
                .of(task.question(), List.of(hole), Progress.unheard())
                .greens()
                .get(0)
                .findings();
    }
}
