package org.cupwright.app.cli.drawn;

import java.util.Optional;
import org.cupwright.app.answers.DrawnText;
import org.cupwright.app.answers.json.DrawnJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.drawn.KeepDrawn;
import org.cupwright.app.desk.drawn.KeepDrawn.Said;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Keeps what a person says of a spot, or of the ground about it. */
@Command(
        name = "add",
        description = {
            "Keeps what a person says of a spot, or of the ground about it. For instance:",
            "  drawn add --hole 7 --kind usual --on 12 --side L5",
            "  drawn add --hole 7 --kind bad --on 4 --side R6 --radius 2.5 --reason \"wet after rain\"",
            "  drawn add --hole 7 --kind area --area 3 --on 14 --side L8 --radius 4",
            "What was said of the same ground before gives way. The day it was said is --date, or today."
        })
final class DrawnAddCommand extends CourseCommand {
    /** More ground than any green has is a slip of the pen, m: our choice. */
    private static final double WIDEST_METRES = 50;

    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Option(
            names = "--kind",
            paramLabel = "good|bad|usual|area",
            required = true,
            description = "Good ground, bad ground, a spot where holes usually go, or an area with a number.")
    private String kind;

    @Mixin
    private SpotOptions spot;

    @Option(
            names = "--radius",
            paramLabel = "M",
            description = "How far about the place the ground is meant, metres; for all but usual spots.")
    private Double radius;

    @Option(names = "--area", paramLabel = "N", description = "The area's number or letter, of one or two signs.")
    private String number;

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
    private String reason;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        KeepDrawn.Answer answer = new KeepDrawn(task.session()).add(task.question(), hole, spot.get(), said());
        task.answer(
                () -> new DrawnJson(answer.day(), task.texts()).of(answer),
                () -> new DrawnText(task.texts(), answer.day()).kept(answer));
    }

    private Said said() {
        Kind said = kind();
        boolean area = said != Kind.USUAL;
        if (area != (radius != null)) {
            throw area
                    ? wrong("How much ground? Give --radius METRES about the place.", kind)
                    : wrong("A usual spot has no radius; say --kind good for the ground about it.", radius.toString());
        }
        if (area && !(radius > 0 && radius <= WIDEST_METRES)) {
            throw wrong("--radius takes metres, more than 0 and at most 50, not " + radius + ".", radius.toString());
        }
        boolean numbered = number != null && number.matches(PersonsOpinion.AREA_PATTERN);
        if (said == Kind.AREA ? !numbered : number != null) {
            throw wrong("--area takes the number or letter of --kind area, one or two signs.", String.valueOf(number));
        }
        return new Said(
                said,
                Optional.ofNullable(reason),
                Optional.of(person.name()),
                Optional.ofNullable(radius),
                Optional.ofNullable(number));
    }

    private Kind kind() {
        for (Kind known : Kind.values()) {
            if (known.name().equalsIgnoreCase(kind)) {
                return known;
            }
        }
        throw wrong("--kind takes good, bad, usual or area, not '" + kind + "'.", kind);
    }
}
