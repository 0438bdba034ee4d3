package org.cupwright.app.cli.plan;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.survey.FindingsCommand;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.AssessPosition;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.holelocation.Judgement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Judges one position with every rule, or a whole green. */
@Command(name = "assess", description = "Judges a position by every rule, or without --at and --on the whole green.")
public final class AssessCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    @Mixin
    private DayOptions day;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Mixin
    private SpotOptions place;

    @Mixin
    private DrawingFiles files;

    public AssessCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        Clock clock = surroundings.clock();
        DayQuestion question = day.question(options);
        Optional<Spot> spot = place.find();
        AssessPrint print = new AssessPrint(task);
        if (files.collide()) {
            throw new Arguments(spec).wrong("--svg, --png and --geojson each take a file of their own.", "");
        }
        if (spot.isPresent()) {
            AssessPosition.Answer answer = new AssessPosition(task.folder(), clock).of(question, hole, spot.get());
            Judgement judgement = answer.position().judgement();
            files.write(answer.day(), answer.green(), findings(task), Optional.of(judgement), task.texts());
            print.position(answer);
        } else {
            AssessGreen.Answer answer = new AssessGreen(task.folder(), clock).of(question, hole);
            files.write(answer.day(), answer.green(), findings(task), Optional.empty(), task.texts());
            print.green(answer);
        }
    }

    /** What is doubtful about the ground, where it is to be drawn: the survey is fitted for it once more. */
    private List<GroundFinding> findings(Task task) {
        if (!files.drawn()) {
            return List.of();
        }
        return new FindDoubts(task.folder(), surroundings.clock())
                .of(FindingsCommand.question(options), List.of(hole), Progress.NONE)
                .greens()
                .get(0)
                .findings();
    }
}
