package org.cupwright.rotation.weeks;

import java.util.List;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.shortage.Shortage;

/**
 * The hole locations of many days.
 *
 * @param days the plan of each day, with its reasons, on the ground that the days before it leave
 * @param points what the whole falls short of all wishes, weighted: the less the better, 0 is all met
 * @param hardestOffPercent by how many per cent the day that differs most plays harder or easier than usual, busy days
 *     apart
 * @param bounds what no plan can be better than, term by term
 * @param shortages why rules could not be kept to, green by green; empty where they were
 * @param work how many holes were priced in the search
 * @param stopped whether somebody stopped the search before it was done; the plan is the best it had found
 */
public record WeeksPlan(
        List<DayPlan> days,
        double points,
        double hardestOffPercent,
        WeeksBounds bounds,
        List<Shortage> shortages,
        long work,
        boolean stopped) {
    public WeeksPlan {
        days = List.copyOf(days);
        shortages = List.copyOf(shortages);
    }

    /** Holes that are cut where a rule is set aside, mostly on ground that still rests; over all days. */
    public long holesSetAside() {
        return days.stream()
                .flatMap(day -> day.holes().stream())
                .filter(hole -> !hole.setAside().isEmpty() && hole.since().isEmpty())
                .count();
    }
}
