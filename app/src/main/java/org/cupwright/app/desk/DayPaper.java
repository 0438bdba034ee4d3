package org.cupwright.app.desk;

import java.util.List;
import java.util.Optional;

/**
 * All that paper of a day is made from: the plan, and the greens it is for.
 *
 * @param day the day, at the speed and in the weather the plan was made for
 * @param plan the plan
 * @param greens the greens in round order, also those that the plan leaves out
 * @param asCutAt the time as of which the holes are as they were cut, {@code 06:40}; empty while the paper shows a plan
 */
public record DayPaper(CourseDay day, StoredPlan plan, List<GreenOnDay> greens, Optional<String> asCutAt) {
    public DayPaper {
        greens = List.copyOf(greens);
    }

    /** The paper of a plan, before anything was cut. */
    static DayPaper planned(CourseDay day, StoredPlan plan, List<GreenOnDay> greens) {
        return new DayPaper(day, plan, greens, Optional.empty());
    }
}
