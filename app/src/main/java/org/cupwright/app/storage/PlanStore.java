package org.cupwright.app.storage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Plans by day, each with every version that was ever made. */
public interface PlanStore {
    /** The newest version of a day's plan. */
    Optional<StoredPlan> find(String courseId, LocalDate day);

    /** The newest version of each day's plan, both days included, in the order of the days. */
    List<StoredPlan> between(String courseId, LocalDate first, LocalDate last);

    /** The days that have a plan, newest first. */
    List<LocalDate> days(String courseId, int atMost);

    void add(StoredPlan plan);
}
