package org.cupwright.app.storage;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans by day, each with every version that was ever made. */
public interface PlanStore {
    /** The newest version of a day's plan. */
    Optional<StoredPlan> find(String courseId, LocalDate day);

    /** The version of a plan by its number, as {@link Versions.Part#PLAN} has it. */
    Optional<StoredPlan> find(String courseId, long number);

    /** The newest version of each day's plan, both days included, in the order of the days. */
    List<StoredPlan> between(String courseId, LocalDate first, LocalDate last);

    /** The days that have a plan, newest first. */
    List<LocalDate> days(String courseId, int atMost);

    /**
     * How often the plan of each of these days was kept, and when last; days without a plan are missing. Of plans that
     * {@link #find} has found whole.
     */
    Map<LocalDate, Kept> kept(String courseId, LocalDate first, LocalDate last);

    /** The version of a day's plan before those that a change made; empty where it made none, or the first. */
    Optional<StoredPlan> before(String courseId, LocalDate day, PlanChange change);

    /**
     * The numbers of the newest versions of the days' plans, as {@link Versions.Part#PLAN} has them; days without a
     * plan are missing.
     */
    Map<LocalDate, Long> numbers(String courseId, LocalDate first, LocalDate last);

    void add(StoredPlan plan);

    /**
     * How a day's plan was kept.
     *
     * @param times how many versions of it there are
     * @param last when the newest was written
     */
    record Kept(int times, Instant last) {}
}
