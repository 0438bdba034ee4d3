package org.cupwright.benchmarks;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.cupchange.Fact;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * The four years of {@link FourYears} with weeks planned ahead: every Monday four weeks together, of which the first is
 * cut as planned. A day counts as one with something set aside when the plan conceded it, or when by what the weather
 * has been since Monday a hole would lie on ground that rests all the same. Stops when a day has no full plan, or when
 * more than one day in twenty has anything set aside.
 */
public final class FourYearsAhead {
    private static final int AHEAD_DAYS = 28;
    private static final int EVERY = 2;
    private static final int HOLES = 18;

    /** What a day had to concede. */
    private enum Conceded {
        PLANNED,
        FOUND_ON_THE_MORNING
    }

    private final ClubYears club = new ClubYears();
    private final DemoPlans plans = new DemoPlans(EVERY);
    private final Map<Conceded, Integer> days = new EnumMap<>(Conceded.class);
    private final Map<Conceded, Integer> holes = new EnumMap<>(Conceded.class);
    private final int[] daysByMonth = new int[12];
    private int count;
    private int conceded;
    private int withCare;

    private FourYearsAhead() {}

    public static void main(String[] arguments) {
        new FourYearsAhead().run();
    }

    private void run() {
        List<LocalDate> all = club.days();
        int most = Integer.getInteger("cupwright.days", all.size());
        TurfState state = TurfState.empty(DemoPlans.ZONE);
        while (count < Math.min(most, all.size())) {
            LocalDate first = all.get(count);
            LocalDate nextMonday = first.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
            for (DayPlan day : plan(all, first, state).days()) {
                if (day.date().isBefore(nextMonday)) {
                    state = cut(day, state);
                }
            }
        }
        print(all.size());
    }

    private WeeksPlan plan(List<LocalDate> all, LocalDate first, TurfState state) {
        LocalDate end = first.plusDays(AHEAD_DAYS);
        List<LocalDate> ahead = all.stream()
                .filter(day -> !day.isBefore(first) && day.isBefore(end))
                .toList();
        WeeksRequest request = plans.weeks(ahead, state, club.known(first), Suite.seed());
        return new WeeksPlanner(DemoPlans.POLICY).plan(request, SearchWatch.patient());
    }

    private TurfState cut(DayPlan day, TurfState state) {
        if (day.holes().size() != HOLES) {
            throw new IllegalStateException("no full plan on " + day.date());
        }
        Map<String, Verdict> found = plans.onTheMorning(day, state, club.known(day.date()));
        Map<Conceded, Integer> today = new EnumMap<>(Conceded.class);
        for (PlannedHole hole : day.holes()) {
            if (!hole.setAside().isEmpty()) {
                today.merge(Conceded.PLANNED, 1, Integer::sum);
            } else if (found.get(hole.hole()) == Verdict.FAIL) {
                today.merge(Conceded.FOUND_ON_THE_MORNING, 1, Integer::sum);
            }
            withCare += found.get(hole.hole()) == Verdict.CAUTION ? 1 : 0;
        }
        today.forEach((kind, number) -> {
            days.merge(kind, 1, Integer::sum);
            holes.merge(kind, number, Integer::sum);
        });
        count++;
        conceded += today.isEmpty() ? 0 : 1;
        daysByMonth[day.date().getMonthValue() - 1] += today.isEmpty() ? 0 : 1;
        List<Fact> facts = day.holes().stream()
                .map(hole -> DemoPlans.cut(day.date(), hole))
                .sorted(Fact.ORDER)
                .toList();
        return TurfFold.fold(state, facts);
    }

    private void print(int all) {
        System.out.printf(
                "anything set aside on %d of %d days (of %d); days by cause %s, holes %s; by month %s%n",
                conceded, count, all, days, holes, Arrays.toString(daysByMonth));
        System.out.printf(
                Locale.ROOT, "%.1f %% of the holes to be used with care%n", 100.0 * withCare / (count * HOLES));
    }
}
