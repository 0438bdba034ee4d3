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
    /** A hole that may count: of one of the greens' holes, on a day of the plan, or before it. */
    private record Cut(int source, int day, LocalDate on, Optional<PastHole> past) {}

    private final List<Cut> newestFirst = new ArrayList<>();
    private final PlanCalendar calendar;
    private final int atMost;
    private final int withinDays;

    /**
     * @param past the holes before the plan of the hole itself and of those that share its green
     * @param open of the same, on which days they have a hole
     */
    LastHoles(PlanCalendar calendar, List<List<PastHole>> past, List<boolean[]> open, int atMost, int withinDays) {
        this.calendar = calendar;
        this.atMost = atMost;
        this.withinDays = withinDays;
        for (int source = 0; source < past.size(); source++) {
            for (int day = 0; day < calendar.size(); day++) {
                if (open.get(source)[day]) {
                    newestFirst.add(new Cut(source, day, calendar.date(day), Optional.empty()));
                }
            }
            for (PastHole hole : past.get(source)) {
                newestFirst.add(new Cut(source, -1, hole.cutOn(), Optional.of(hole)));
            }
        }
        newestFirst.sort(
                Comparator.comparing(Cut::on, Comparator.reverseOrder()).thenComparing(Cut::source));
    }

    /** The holes before the plan that count on a day. */
    List<PastHole> past(int day) {
        return counting(day).stream().flatMap(cut -> cut.past.stream()).toList();
    }

    /** The first day of the plan whose hole counts on a day; that day itself where none before it does. */
    int from(int source, int day) {
        return counting(day).stream()
                .filter(cut -> cut.source == source && cut.past.isEmpty())
                .mapToInt(Cut::day)
                .min()
                .orElse(day);
    }

    private List<Cut> counting(int day) {
        LocalDate today = calendar.date(day);
        return newestFirst.stream()
                .filter(cut -> cut.on.isBefore(today) && !cut.on.isBefore(today.minusDays(withinDays)))
                .limit(atMost)
                .toList();
    }
}
