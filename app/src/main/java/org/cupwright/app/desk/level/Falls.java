package org.cupwright.app.desk.level;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.LevelSpot;
import org.cupwright.green.LevelReading;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;

/**
 * What a person read off the level at one spot: how much the ground falls, in percent, and which way.
 *
 * <p>One fall is the steepest, and its direction the way a ball would run. Two falls are read across each other, the
 * level turned by about a right angle. A direction is {@code front}, {@code back}, {@code left} or {@code right} as
 * seen from the fairway, or degrees clockwise from the map's north; a fall below zero rises that way.
 *
 * @param byDirection percent by direction, one or two
 */
public record Falls(Map<String, Double> byDirection) {
    public Falls {
        byDirection = Map.copyOf(byDirection);
    }

    /**
     * The reading at a spot.
     *
     * @throws Problem when it cannot be one
     */
    LevelReading at(Hole hole, MapPoint place, double standardErrorPercent) {
        List<String> directions = byDirection.keySet().stream().sorted().toList();
        Heading first = heading(hole, directions.get(0));
        double fall = byDirection.get(directions.get(0));
        LevelReading reading = directions.size() == 1
                ? LevelReading.steepest(place, fall, first, standardErrorPercent)
                : across(place, fall, first, directions.get(1), hole, standardErrorPercent);
        if (reading.plane().slopePercent() > LevelSpot.GREATEST_PERCENT) {
            throw problem("problem.fallTooSteep", byDirection.toString(), "try.fallTooSteep");
        }
        return reading;
    }

    private LevelReading across(
            MapPoint place, double fall, Heading first, String other, Hole hole, double standardErrorPercent) {
        double otherFall = byDirection.get(other);
        Heading second = heading(hole, other);
        try {
            return LevelReading.across(place, -fall, first, -otherFall, second, standardErrorPercent);
        } catch (IllegalArgumentException doNotCross) {
            throw problem("problem.fallsDoNotCross", byDirection.toString(), "try.fallsDoNotCross");
        }
    }

    private static Heading heading(Hole hole, String direction) {
        return switch (direction.toLowerCase(Locale.ROOT)) {
            case "back" -> play(hole, direction);
            case "right" -> play(hole, direction).turnedClockwise(90);
            case "front" -> play(hole, direction).turnedClockwise(180);
            case "left" -> play(hole, direction).turnedClockwise(270);
            default -> degrees(direction);
        };
    }

    private static Heading play(Hole hole, String direction) {
        return hole.lineOfPlay()
                .orElseThrow(() -> problem("problem.fallNeedsLineOfPlay", direction, "try.fallNeedsLineOfPlay"))
                .atGreen();
    }

    private static Heading degrees(String direction) {
        if (!direction.matches("[0-9]{1,3}([.][0-9]+)?")) {
            throw problem("problem.fallDirection", direction, "try.fallDirection");
        }
        return Heading.ofDegrees(Double.parseDouble(direction));
    }

    private static Problem problem(String what, String value, String tryThis) {
        return Problem.of(Message.of(what), "falls", value, Message.of(tryThis));
    }
}
