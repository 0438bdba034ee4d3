package org.cupwright.app.cli.plan;

import org.cupwright.app.answers.GreenText;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.green.RollBall;
import org.cupwright.course.MapPoint;
import org.cupwright.roll.Roll;
import org.cupwright.units.Heading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Rolls one ball on a surveyed green. */
@Command(name = "roll", description = "Rolls a ball on a surveyed green and says where it stops.")
public final class RollCommand extends CourseCommand {
    /** The fastest launch asked for, m/s: our choice; a putt over the longest green takes about 8. */
    private static final double FASTEST_LAUNCH = 20;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Option(names = "--from", paramLabel = "E,N", required = true, description = "Where the ball starts.")
    private String from;

    @Option(
            names = "--heading",
            paramLabel = "DEG",
            required = true,
            description = "Its direction, clockwise from north on the map.")
    private double heading;

    @Option(
            names = "--launch",
            paramLabel = "V",
            required = true,
            description = "Its speed along the ground, metres per second.")
    private double launch;

    @Override
    protected void run(Task task) {
        if (!Double.isFinite(heading)) {
            throw wrong("--heading takes degrees, not " + heading + ".", Double.toString(heading));
        }
        if (!(launch > 0 && launch <= FASTEST_LAUNCH)) {
            throw wrong(
                    "--launch takes metres per second above 0 and up to 20, not " + launch + ".",
                    Double.toString(launch));
        }
        MapPoint start = new Arguments(spec()).point("--from", from);
        Roll roll = new RollBall(task.session()).roll(task.question(), hole, start, Heading.ofDegrees(heading), launch);
        task.answer(roll, () -> new GreenText(task.texts()).rolled(roll, start));
    }
}
