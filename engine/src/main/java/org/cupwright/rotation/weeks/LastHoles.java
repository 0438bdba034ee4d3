package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which holes count among a green's last on a day, where several holes may be played to it: of each hole's own days the
 * first that does, and of the holes before the plan how many.
 */
final class LastHoles {
    /**
     * A hole that may count: of one of the greens' holes, on a day of the plan, or before it.
     *
     * @param day the first day of its stay
     * @param last the last day on which it was played to
     */
    private record Played(int source, int day, LocalDate last, Optional<PastHole> past) {}

    private final List<Played> newestFirst = new ArrayList<>();
    private final PlanCalendar calendar;
    private final int atMost;
    private final int withinDays;

    /** @param greens the hole's own table, then those of the holes that share its green */
    LastHoles(PlanCalendar calendar, List<GreenTable> greens, int atMost, int withinDays) {
        this.calendar = calendar;
        this.atMost = atMost;
        this.withinDays = withinDays;
        for (int source = 0; source < greens.size(); source++) {
            GreenTable green = greens.get(source);
            for (int day = 0; day < calendar.size(); day++) {
                if (green.open(day) && green.stays().begins(day)) {
                    LocalDate last = calendar.date(green.stays().end(day) - 1);
                    newestFirst.add(new Played(source, day, last, Optional.empty()));
                }
            }
            for (PastHole hole : green.past()) {
                newestFirst.add(new Played(source, -1, hole.lastDay(calendar.date(0)), Optional.of(hole)));
            }
        }
        newestFirst.sort(
                Comparator.comparing(Played::last, Comparator.reverseOrder()).thenComparing(Played::source));
    }

    /** The holes before the plan that count on a day. */
    List<PastHole> past(int day) {
        return counting(day).stream().flatMap(hole -> hole.past.stream()).toList();
    }

    /** The first day of the plan whose hole counts on a day; that day itself where none before it does. */
    int from(int source, int day) {
        return counting(day).stream()
                .filter(hole -> hole.source == source && hole.past.isEmpty())
                .mapToInt(Played::day)
                .min()
                .orElse(day);
    }

    private List<Played> counting(int day) {
        LocalDate today = calendar.date(day);
        return newestFirst.stream()
                .filter(hole -> hole.last.isBefore(today) && !hole.last.isBefore(today.minusDays(withinDays)))
                .limit(atMost)
                .toList();
    }
}
