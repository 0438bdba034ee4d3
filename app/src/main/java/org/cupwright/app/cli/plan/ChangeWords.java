package org.cupwright.app.cli.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.plan.ChangeAsked.OnDay;
import org.cupwright.app.desk.plan.ChangeAsked.Spoiled;
import org.cupwright.app.desk.plan.ChangeAsked.Swap;
import org.cupwright.app.desk.plan.HoleWish;
import picocli.CommandLine.TypeConversionException;

/**
 * What is wanted otherwise of single holes, as it is typed: {@code 7=12,L5}, {@code tomorrow:7=12,L5}, a place being
 * what {@code --on} and {@code --side}, or {@code --at}, take elsewhere.
 */
record ChangeWords(Task task, Arguments arguments) {
    private static final double MOST_RADIUS_METRES = 30;

    /** A hole, and the day before it where one is named. */
    private record OfHole(Optional<LocalDate> day, String hole) {}

    OnDay lock(String text) {
        String[] sides = sides(text, "--lock", "7=12,L5");
        String[] parts = sides[1].split(",", -1);
        if (parts.length != 2) {
            throw form("--lock", "7=12,L5", text);
        }
        OfHole of = hole(sides[0]);
        return new OnDay(of.day(), new HoleWish.Here(of.hole(), place("--lock", parts, text)));
    }

    OnDay forbid(String text) {
        String[] sides = sides(text, "--forbid", "7=12,L5,3");
        String[] parts = sides[1].split(",", -1);
        if (parts.length != 3) {
            throw form("--forbid", "7=12,L5,3", text);
        }
        double radius = number(parts[2], "--forbid", text);
        if (!(radius > 0 && radius <= MOST_RADIUS_METRES)) {
            throw arguments.wrong("The last of --forbid is metres above 0 and at most 30, not " + radius + ".", text);
        }
        OfHole of = hole(sides[0]);
        return new OnDay(of.day(), new HoleWish.NotHere(of.hole(), place("--forbid", parts, text), radius));
    }

    OnDay free(String text) {
        OfHole of = hole(text);
        return new OnDay(of.day(), new HoleWish.Free(of.hole()));
    }

    Spoiled spoiled(String text) {
        OfHole of = hole(text);
        return new Spoiled(of.day(), of.hole());
    }

    /** {@code 2026-06-12:7,2026-06-14:7}, which the options have split at the comma already, or not. */
    Swap swap(String text) {
        List<OfHole> both =
                List.of(text.split(",", -1)).stream().map(this::hole).toList();
        boolean pair = both.size() == 2
                && both.stream().allMatch(one -> one.day().isPresent())
                && both.get(0).hole().equals(both.get(1).hole())
                && !both.get(0).day().equals(both.get(1).day());
        if (!pair) {
            throw arguments.wrong(
                    "--swap takes two days of one hole, as --swap 2026-06-12:7,2026-06-14:7, not '" + text + "'.",
                    text);
        }
        return new Swap(
                both.get(0).hole(),
                both.get(0).day().orElseThrow(),
                both.get(1).day().orElseThrow());
    }

    private String[] sides(String text, String option, String example) {
        String[] sides = text.split("=", 2);
        if (sides.length != 2 || sides[0].isBlank()) {
            throw form(option, example, text);
        }
        return sides;
    }

    private OfHole hole(String text) {
        int colon = text.lastIndexOf(':');
        String hole = text.substring(colon + 1).strip();
        if (hole.isEmpty()) {
            throw arguments.wrong("Say for which hole: 7, or tomorrow:7.", text);
        }
        if (colon < 0) {
            return new OfHole(Optional.empty(), hole);
        }
        try {
            return new OfHole(Optional.of(task.day(AskedDay.of(text.substring(0, colon)))), hole);
        } catch (TypeConversionException noDay) {
            throw arguments.wrong("'" + text.substring(0, colon) + "': " + noDay.getMessage() + ".", text);
        }
    }

    private Spot place(String option, String[] parts, String text) {
        boolean paced = parts[1].chars().anyMatch(Character::isLetter);
        return paced
                ? arguments.paced(number(parts[0], option, text), parts[1])
                : new Spot.At(arguments.point(option, parts[0] + "," + parts[1]));
    }

    private double number(String part, String option, String text) {
        try {
            return Arguments.number(part);
        } catch (TypeConversionException noNumber) {
            throw arguments.wrong(option + ": " + noNumber.getMessage() + ".", text);
        }
    }

    private RuntimeException form(String option, String example, String text) {
        return arguments.wrong(
                option + " takes a hole and a place, as " + option + " " + example + ", not '" + text + "'.", text);
    }
}
