package org.cupwright.app.cli.log;

import java.util.List;
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
        if (!new LogPrint(task).isJson(said)) {
            page(stop, task.texts()).forEach(task::print);
        }
    }

    private static List<String> page(StopForCup stop, Texts texts) {
        String depth = texts.say(
                "cutterStop.depth",
                millimetres(texts, stop.cupMillimetres()),
                millimetres(texts, stop.depthMillimetres()),
                texts.number(stop.depthMillimetres() / StopForCup.MILLIMETRES_PER_INCH, 2) + " in");
        String typed = Long.toString(Math.round(stop.depthMillimetres()));
        return List.of(
                depth,
                texts.say("cutterStop.why", millimetres(texts, CutterStop.RIM_DOWN_MILLIMETRES)),
                texts.say("cutterStop.keep", typed));
    }

    private static String millimetres(Texts texts, double value) {
        return texts.number(value, value == Math.rint(value) ? 0 : 1) + " mm";
    }
}
