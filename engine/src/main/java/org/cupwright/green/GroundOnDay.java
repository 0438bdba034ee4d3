package org.cupwright.green;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;

/**
 * What lies on one green on one day: holes that rest, plugs, closed and saved ground.
 *
 * @param day the day
 * @param items everything known of the green, also what no longer counts on the day: the last holes are asked for too
 */
public record GroundOnDay(LocalDate day, List<GroundItem> items) {
    public GroundOnDay {
        items = List.copyOf(items);
    }

    /** A green on which nothing lies. */
    public static GroundOnDay clear(LocalDate day) {
        return new GroundOnDay(day, List.of());
    }

    /** The items of a kind that count on the day. */
    public List<GroundItem> counting(GroundItem.Kind kind) {
        return items.stream()
                .filter(item -> item.kind() == kind && item.countsOn(day))
                .toList();
    }

    /**
     * Where the last holes were, newest first, whether they still rest or not; holes without a date come last.
     *
     * @param days how many days ago a hole was played to at most
     */
    public List<MapPoint> lastHoles(int atMost, int days) {
        LocalDate from = day.minusDays(days);
        Comparator<GroundItem> newestFirst =
                Comparator.comparing(item -> item.since().orElse(LocalDate.MIN), Comparator.reverseOrder());
        Stream<GroundItem> holes = items.stream()
                .filter(item -> item.kind() == GroundItem.Kind.OLD_HOLE)
                .filter(item -> item.since().filter(from::isAfter).isEmpty())
                .sorted(newestFirst);
        return holes.limit(atMost)
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
    }
}
