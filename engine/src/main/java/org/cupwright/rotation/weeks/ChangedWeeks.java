package org.cupwright.rotation.weeks;

import java.util.List;
import org.cupwright.rotation.DayPlan;

/**
 * A plan of weeks with its changes.
 *
 * @param changes the holes that are elsewhere than they stood, day by day in round order
 * @param days the plans of the days that have any, with their reasons, on the ground that the days before them leave;
 *     reasons, alternatives and bounds are of the greens that were chosen anew, the others being where they are
 * @param before how even those days were
 * @param after how even they are
 * @param stopped whether somebody stopped it before it was done
 */
public record ChangedWeeks(
        List<HoleChange> changes, List<DayPlan> days, Evenness before, Evenness after, boolean stopped) {
    public ChangedWeeks {
        changes = List.copyOf(changes);
        days = List.copyOf(days);
    }
}
