package org.cupwright.app.desk.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.PlanStore.Kept;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.cupchange.Fact;
import org.cupwright.policy.PolicyChange;

/** The plans of coming days as they stand; nothing is planned. */
public record ShowWeeks(Session session) {
    /** Whoever writes something down later than that does not change what a plan rests on: our choice. */
    private static final int LATE_DAYS = 14;

    /** Begin the names of settings that no plan depends on. */
    private static final Set<String> AFTER_PLANNING = Set.of("desk", "paper", "round");

    /**
     * One of the days.
     *
     * @param plan its newest plan, if it has one
     */
    public record OfDay(LocalDate date, Optional<StoredPlan> plan) {}

    /**
     * What is not in the plans, because it came later.
     *
     * @param settings how many drafts were made by other settings, of those that count for plans
     * @param entries how many entries of the logbook were received since the oldest draft was kept
     */
    public record Since(int settings, int entries) {}

    /**
     * The plans.
     *
     * @param day the first day
     * @param days the days from the first to the last that is planned, days without a plan among them; empty where
     *     none is planned
     * @param seen what changes of these plans rest on
     * @param last the last change of any of them
     * @param since what is not in them
     */
    public record Answer(CourseDay day, List<OfDay> days, SeenPlans seen, Optional<PlanChange> last, Since since) {
        public Answer {
            days = List.copyOf(days);
        }

        /** The plans that there are, in the order of their days. */
        public List<StoredPlan> plans() {
            return days.stream().flatMap(day -> day.plan().stream()).toList();
        }

        /** How many days have a plan, one after another from the first on. */
        public int inARow() {
            return (int) days.stream().takeWhile(day -> day.plan().isPresent()).count();
        }
    }

    /** From the day that is asked about as far as is planned, at most {@link PlanWeeks#MOST_DAYS}. */
    public Answer of(DayQuestion question) {
        return session.read(stores -> read(stores, question));
    }

    private Answer read(Stores stores, DayQuestion question) {
        CourseDay first = CourseDay.of(stores, question, session);
        LocalDate end = first.date().plusDays(PlanWeeks.MOST_DAYS - 1L);
        List<StoredPlan> plans = stores.plans().between(first.course().id(), first.date(), end);
        List<OfDay> days = plans.isEmpty()
                ? List.of()
                : first.date()
                        .datesUntil(plans.get(plans.size() - 1).date().plusDays(1))
                        .map(date -> new OfDay(date, plan(stores, first, date, plans)))
                        .toList();
        return new Answer(
                first,
                days,
                SeenPlans.of(stores, first.course(), first.date(), PlanWeeks.MOST_DAYS),
                plans.stream().flatMap(plan -> plan.change().stream()).max(Comparator.comparing(PlanChange::at)),
                since(stores, first, end, plans));
    }

    /** What is to come cannot be done yet: of that nobody need ask the logbook. */
    private Optional<StoredPlan> plan(Stores stores, CourseDay first, LocalDate date, List<StoredPlan> plans) {
        boolean toCome = date.isAfter(CourseToday.of(first.course(), session.clock()));
        return toCome
                ? plans.stream().filter(plan -> plan.date().equals(date)).findFirst()
                : PlanChoice.find(stores, first.course(), date);
    }

    private static Since since(Stores stores, CourseDay first, LocalDate end, List<StoredPlan> plans) {
        List<StoredPlan> drafts =
                plans.stream().filter(plan -> plan.state() == State.DRAFT).toList();
        List<PolicyChange> all = stores.policies().history(first.course().id()).changes();
        int settings = (int) drafts.stream()
                .filter(plan -> all.subList(plan.basis().policyVersion(), all.size()).stream()
                        .anyMatch(ShowWeeks::countsForPlans))
                .count();
        Map<LocalDate, Kept> kept = stores.plans().kept(first.course().id(), first.date(), end);
        List<Instant> times = new ArrayList<>();
        drafts.forEach(plan -> times.add(kept.get(plan.date()).last()));
        int entries = times.stream()
                .min(Comparator.naturalOrder())
                .map(oldest -> entries(stores, first, oldest))
                .orElse(0);
        return new Since(settings, entries);
    }

    private static boolean countsForPlans(PolicyChange change) {
        return !AFTER_PLANNING.contains(change.key().split("[.]", 2)[0]);
    }

    private static int entries(Stores stores, CourseDay first, Instant since) {
        List<Fact> facts = stores.facts()
                .between(first.course().id(), since.minusSeconds(LATE_DAYS * 86_400L), FactStore.LONG_HENCE);
        return (int) facts.stream()
                .filter(fact -> fact.recordedAtServer().filter(since::isBefore).isPresent())
                .count();
    }
}
