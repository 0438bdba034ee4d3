package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;

/**
 * The plans of some days as somebody has seen them.
 *
 * @param numbers for each day the number of the plan that was seen, as {@link Part#PLAN} has it; 0 where there was none
 */
public record SeenPlans(Map<LocalDate, Long> numbers) {
    /** Nobody has looked at anything: whatever is there is meant. */
    public static final SeenPlans NONE = new SeenPlans(Map.of());

    public SeenPlans {
        numbers = new TreeMap<>(numbers);
    }

    /** The plans of so many days from the first on as they are now. */
    static SeenPlans of(Stores stores, Course course, LocalDate first, int days) {
        Map<LocalDate, Long> now = stores.plans().numbers(course.id(), first, first.plusDays(days - 1L));
        Map<LocalDate, Long> numbers = new TreeMap<>();
        first.datesUntil(first.plusDays(days)).forEach(day -> numbers.put(day, now.getOrDefault(day, 0L)));
        return new SeenPlans(numbers);
    }

    /** @throws Problem where some of the days have other plans by now: with which, and by whom */
    void refuseIfOthers(Stores stores, Course course) {
        if (numbers.isEmpty()) {
            return;
        }
        Map<LocalDate, Long> now = stores.plans()
                .numbers(course.id(), Collections.min(numbers.keySet()), Collections.max(numbers.keySet()));
        List<Message> others = new ArrayList<>();
        numbers.forEach((day, seen) -> {
            if (!seen.equals(now.getOrDefault(day, 0L))) {
                others.add(told(stores, course, day, seen));
            }
        });
        if (!others.isEmpty()) {
            throw Problem.of(Message.of("problem.plansChanged", new Said(others)), Message.of("try.plansChanged"));
        }
    }

    private static Message told(Stores stores, Course course, LocalDate day, long seen) {
        Optional<StoredPlan> before = stores.plans().find(course.id(), seen);
        Optional<StoredPlan> now = stores.plans().find(course.id(), day);
        if (before.isEmpty() || now.isEmpty()) {
            return Message.of("since.planned", new Day(day));
        }
        boolean published = now.get().state() == State.PUBLISHED && before.get().state() == State.DRAFT;
        return published ? Message.of("since.published", new Day(day)) : PlansMeanwhile.told(before.get(), now.get());
    }
}
