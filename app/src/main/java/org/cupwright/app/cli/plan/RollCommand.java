package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.green.RollBall;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.EnumNames;
import org.cupwright.roll.Roll;
import org.cupwright.units.Heading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tools.jackson.databind.node.ObjectNode;

/** Rolls one ball on a surveyed green. */
@Command(name = "roll", description = "Rolls a ball on a surveyed green and says where it stops.")
public final class RollCommand extends CourseCommand {
    /** The fastest launch asked for, m/s: our choice; a putt over the longest green takes about 8. */
    private static final double FASTEST_LAUNCH = 20;

    @Mixin
    private DayOptions day;

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
        Arguments arguments = new Arguments(spec());
        if (!Double.isFinite(heading)) {
            throw arguments.wrong("--heading takes degrees, not " + heading + ".", Double.toString(heading));
        }
        if (!(launch > 0 && launch <= FASTEST_LAUNCH)) {
            throw arguments.wrong(
                    "--launch takes metres per second above 0 and up to 20, not " + launch + ".",
                    Double.toString(launch));
        }
        MapPoint start = arguments.point("--from", from);
        Roll roll = new RollBall(task.session())
                .roll(day.question(task.options()), hole, start, Heading.ofDegrees(heading), launch);
        if (task.options().json()) {
            task.print(Json.document(json(roll)));
        } else {
            page(roll, start, task.texts()).forEach(task::print);
        }
    }

    private static List<String> page(Roll roll, MapPoint start, Texts texts) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("roll." + EnumNames.lowerCamel(roll.end()), texts.number(roll.seconds(), 1)));
        lines.add(texts.say(
                "roll.where",
                texts.coordinate(roll.stop().east()),
                texts.coordinate(roll.stop().north()),
                texts.length(roll.stop().distanceMetres(start))));
        lines.add(texts.say("roll.path", texts.length(roll.pathGroundMetres())));
        return lines;
    }

    private static ObjectNode json(Roll roll) {
        ObjectNode node = Json.object();
        ObjectNode stop = node.putObject("stop");
        stop.set("east", Json.number(roll.stop().east()));
        stop.set("north", Json.number(roll.stop().north()));
        node.set("seconds", Json.number(roll.seconds()));
        node.set("pathMetres", Json.number(roll.pathMetres()));
        node.set("pathGroundMetres", Json.number(roll.pathGroundMetres()));
        node.put("end", EnumNames.lowerCamel(roll.end()));
        return node;
    }
}
