package org.cupwright.benchmarks;

import java.time.LocalDate;
import java.time.Month;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.cupwright.cupchange.Fact;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.democourse.DemoPlans.Planned;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.turf.GrassKind;
import org.cupwright.turf.growth.GrowthSeries;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.units.Paces;

/**
 * Four years of hole changes on the invented course in the weather of a real place (vega-datasets, seattle-weather.csv,
 * 2012–2015): each day is planned on the ground that the days before have left, with no more of the weather than was
 * known on its morning. Prints growing days by month, days on which a rule was set aside, and how many holes have room
 * about them; stops when a day has no full plan, or when more than one day in twenty has anything set aside.
 *
 * <p>Of the lattice's spots every other one along and across is offered to the plan, all of them where that leaves few.
 * Takes a while: for a quick look {@code JAVA_TOOL_OPTIONS=-Dcupwright.days=60 benchmarks/run FourYears}.
 */
public final class FourYears {
    private static final int EVERY = 2;
    private static final int HOLES = 18;
    private static final int SELDOM = 20;
    private static final double HALF_A_PACE_METRES = Paces.STANDARD_METRES / 2;

    private final ClubYears club = new ClubYears();
    private final Map<Month, Integer> changes = new TreeMap<>();
    private final Map<Month, Integer> concededDays = new TreeMap<>();
    private final Map<String, Integer> daysByConcession = new TreeMap<>();
    private int holes;
    private int withRoom;
    private int withCare;

    private FourYears() {}

    public static void main(String[] arguments) {
        new FourYears().run();
    }

    private void run() {
        List<LocalDate> days = club.days();
        int count = Math.min(days.size(), Integer.getInteger("cupwright.days", days.size()));
        DemoPlans plans = new DemoPlans(EVERY);
        TurfState state = TurfState.empty(DemoPlans.ZONE);
        for (LocalDate day : days.subList(0, count)) {
            Planned planned = plans.plan(day, state, club.known(day));
            note(day, planned);
            state = TurfFold.fold(
                    state,
                    planned.plan().holes().stream()
                            .map(hole -> DemoPlans.cut(day, hole))
                            .sorted(Fact.ORDER)
                            .toList());
        }
        print(count, days.size());
    }

    private void note(LocalDate day, Planned planned) {
        if (planned.plan().holes().size() != HOLES) {
            throw new IllegalStateException("no full plan on " + day + ", conceded " + planned.conceded());
        }
        for (PlannedHole hole : planned.plan().holes()) {
            holes++;
            withRoom += hole.candidate().goodWithinMetres() >= HALF_A_PACE_METRES ? 1 : 0;
            withCare += hole.candidate().verdict() == Verdict.PASS ? 0 : 1;
        }
        Set<String> conceded = new HashSet<>();
        planned.conceded()
                .values()
                .forEach(steps ->
                        steps.forEach(step -> conceded.add(step.concession().name())));
        conceded.forEach(concession -> daysByConcession.merge(concession, 1, Integer::sum));
        changes.merge(day.getMonth(), 1, Integer::sum);
        concededDays.merge(day.getMonth(), conceded.isEmpty() ? 0 : 1, Integer::sum);
    }

    private void print(int count, int all) {
        GrowthSeries growth =
                GrowthSeries.over(club.known(ClubYears.END), GrassKind.COOL_SEASON, ClubYears.FIRST, ClubYears.END);
        System.out.println("| month | growing days a year | days planned in four years | with anything set aside |");
        System.out.println("|---|---|---|---|");
        for (Month month : Month.values()) {
            double growing = ClubYears.FIRST
                            .datesUntil(ClubYears.END)
                            .filter(day -> day.getMonth() == month)
                            .mapToDouble(growth::on)
                            .sum()
                    / ClubYears.YEARS;
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.1f | %d | %d |%n",
                    month,
                    growing,
                    changes.getOrDefault(month, 0),
                    concededDays.getOrDefault(month, 0));
        }
        int conceded =
                concededDays.values().stream().mapToInt(Integer::intValue).sum();
        System.out.printf(
                "anything set aside on %d of %d days planned (of %d), by rule %s%n",
                conceded, count, all, daysByConcession);
        System.out.printf(
                Locale.ROOT,
                "half a pace or more about %.1f %% of the holes; %.1f %% to be used with care%n",
                100.0 * withRoom / holes,
                100.0 * withCare / holes);
        if (conceded > count / SELDOM) {
            throw new IllegalStateException("rules were set aside on more than one day in twenty");
        }
    }
}
