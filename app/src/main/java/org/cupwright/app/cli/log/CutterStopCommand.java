package org.cupwright.app.cli.log;

import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.json.Shape;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.StopForCup;
import org.cupwright.app.texts.Texts;
import org.cupwright.turf.signal.CutterStop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how deep a cutter's stop belongs. */
@Command(name = "cutter-stop", description = "Says how deep a cutter's stop belongs for a cup so high.")
public final class CutterStopCommand extends CourseCommand {
    @Parameters(paramLabel = "HEIGHT", description = "The cup's height, foot to rim: 102, 102mm or 4in.")
    private String height;

    @Option(names = "--yes", description = "The height is meant though it looks like the other unit.")
    private boolean sure;

    @Override
    protected void run(Task task) {
        StopForCup stop = StopForCup.of(height, sure);
        Shape said = new Shape()
                .with("cupMillimetres", stop.cupMillimetres())
                .with("depthMillimetres", stop.depthMillimetres());
        task.answer(said, () -> lines(stop, task.texts()));
    }

    private static Lines lines(StopForCup stop, Texts texts) {
        String depth = millimetres(texts, stop.depthMillimetres());
        String inches = texts.number(stop.depthMillimetres() / StopForCup.MILLIMETRES_PER_INCH, 2) + " in";
        return new Lines(texts)
                .say("cutterStop.depth", millimetres(texts, stop.cupMillimetres()), depth, inches)
                .say("cutterStop.why", millimetres(texts, CutterStop.RIM_DOWN_MILLIMETRES))
                .say("cutterStop.keep", Long.toString(Math.round(stop.depthMillimetres())));
    }

    private static String millimetres(Texts texts, double value) {
        return texts.number(value) + " mm";
    }
}
