package org.cupwright.app.desk.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.desk.turf.WeeksWeather;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.PlanStore.Kept;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Brings together the plans of several days as they are stored, drafts and published ones; nothing is planned anew. */
public record PrepareWeeks(Session session) {
    /** A year, leap day included: our choice. */
    public static final int MOST_DAYS = 366;

    private static final int DAYS_NAMED = 5;

    /**
     * The plans of days from the one that is asked about.
     *
     * @throws Problem when one of the days has no plan
     */
    public WeeksPaper of(DayQuestion question, int days) {
        if (days < 1 || days > MOST_DAYS) {
            throw Problem.of("daysOnPaper", "days", days, new Count(MOST_DAYS));
        }
        return session.read(stores -> read(stores, question, days));
    }

    private WeeksPaper read(Stores stores, DayQuestion question, int days) {
        CourseDay day = CourseDay.of(stores, question, session);
        LocalDate last = day.date().plusDays(days - 1L);
        return new WeeksPaper(
                day.course(),
                day.policy(),
                plans(stores, day, last),
                WeeksWeather.of(stores, day, day.date(), last),
                CourseToday.of(day.course(), session.clock()),
                session.person().name());
    }

    private static List<PlanOfDay> plans(Stores stores, CourseDay first, LocalDate last) {
        List<StoredPlan> found = new ArrayList<>();
        List<LocalDate> missing = new ArrayList<>();
        for (LocalDate date = first.date(); !date.isAfter(last); date = date.plusDays(1)) {
            Optional<StoredPlan> plan = PlanChoice.find(stores, first.course(), date);
            plan.ifPresent(found::add);
            if (plan.isEmpty()) {
                missing.add(date);
            }
        }
        if (!missing.isEmpty()) {
            throw none(missing, missing.size() + found.size(), first.date());
        }
        Map<LocalDate, Kept> kept = stores.plans().kept(first.course().id(), first.date(), last);
        return found.stream().map(plan -> with(plan, kept.get(plan.date()))).toList();
    }

    private static PlanOfDay with(StoredPlan plan, Kept kept) {
        return new PlanOfDay(plan, kept.times(), kept.last());
    }

    private static Problem none(List<LocalDate> missing, int asked, LocalDate first) {
        String named =
                missing.stream().limit(DAYS_NAMED).map(LocalDate::toString).collect(Collectors.joining(", "));
        String more = missing.size() > DAYS_NAMED ? ", …" : "";
        return Problem.of(
                Message.of("problem.daysWithoutPlan", new Count(missing.size()), new Count(asked)),
                "days",
                named + more,
                Message.of("try.daysWithoutPlan", new Name(Integer.toString(asked)), new Name(first.toString())));
    }
}
