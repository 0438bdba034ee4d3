package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cupwright.app.answers.RoundText;
import org.cupwright.app.answers.json.RoundJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.round.GiveHoles;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.desk.round.RoundWish;
import org.cupwright.policy.EnumNames;
import org.cupwright.round.StartType;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the round of a day, or says how play begins that day and who cuts which holes. */
@Command(
        name = "round",
        description = {
            "Shows in which order and by when the day's holes are to be cut, and who has which.",
            "With options: says so for that day; what no option names stays as it is."
        })
public final class RoundCommand extends CourseCommand {
    @Option(
            names = "--start",
            paramLabel = "TYPE",
            description = "From which tees the first groups go: firstTee, twoTees, splitNines or shotgun.")
    private String start;

    @Option(
            names = "--first",
            paramLabel = "TIME",
            description = "When the first groups go, as 07:00; with splitNines one for each nine, as 07:00,09:30.")
    private String first;

    @Option(names = "--frost", paramLabel = "MIN", description = "How many minutes later because of frost.")
    private Integer frost;

    @Option(
            names = "--give",
            paramLabel = "HOLES=NAME",
            description = "Who cuts which holes, as 1-9=Ash; may be repeated. Whoever had them has them no more.")
    private List<String> given = new ArrayList<>();

    @Option(
            names = "--nobody",
            paramLabel = "HOLES",
            description = "Holes that nobody has; with all, one person has the whole round.")
    private List<String> nobody = new ArrayList<>();

    @Option(
            names = "--usual",
            description = "Take back what was said of the day: it begins as usual, and everybody has what they had on"
                    + " the last day that began so.")
    private boolean usual;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        RoundWish wish = new RoundWish(
                Optional.ofNullable(start).map(this::type),
                Optional.ofNullable(first),
                frost == null ? OptionalInt.empty() : OptionalInt.of(frost),
                given.stream().map(this::give).toList(),
                nobody);
        boolean asks = start != null || first != null || frost != null || !given.isEmpty() || !nobody.isEmpty();
        if (usual && asks) {
            throw wrong("--usual stands alone.", "");
        }
        RoundOfDay round = usual
                ? new GiveHoles(task.session(person)).asUsual(task.date())
                : asks
                        ? new GiveHoles(task.session(person)).change(task.date(), wish)
                        : new GiveHoles(task.session()).show(task.date());
        task.answer(RoundJson.of(round), () -> new RoundText(task.texts()).lines(round));
    }

    private StartType type(String typed) {
        return EnumNames.find(StartType.class, typed)
                .orElseThrow(() ->
                        wrong("--start takes firstTee, twoTees, splitNines or shotgun, not '" + typed + "'.", typed));
    }

    private RoundWish.Give give(String typed) {
        int equals = typed.indexOf('=');
        if (equals < 1 || equals == typed.length() - 1) {
            throw wrong("--give takes holes and a name, as --give 1-9=Ash, not '" + typed + "'.", typed);
        }
        return new RoundWish.Give(typed.substring(equals + 1), typed.substring(0, equals));
    }
}
