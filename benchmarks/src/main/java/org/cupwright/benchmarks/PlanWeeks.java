package org.cupwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.published.SeattleWeather;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.rotation.weeks.WeeksWays;
import org.cupwright.rotation.weeks.WeeksWays.Worth;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * Weeks of hole locations on the invented course, in the weather of a real place as it was known on the first morning
 * (vega-datasets, seattle-weather.csv): four weeks of eighteen greens and twelve of twenty-seven, by several ways. What
 * each plan is worth is worked out anew by code that shares none with the search; stops where the two differ, when more
 * work makes a plan worse, or when four weeks in summer need ground that rests.
 *
 * <p>With names of parts only those are run: {@code summer}, {@code spring}, {@code twelve}.
 */
public final class PlanWeeks {
    private static final int WEEK = 7;
    private static final LocalDate SUMMER = LocalDate.of(2014, 7, 1);
    private static final LocalDate SPRING = LocalDate.of(2014, 4, 10);
    private static final long[] WORK_PER_HOLE = {10_000, WeeksPlanner.WORK_PER_HOLE, 120_000};
    private static final double[] SECONDS = {1, 10, 60};

    /** From so many on the solver is not asked, as it finds no plan of half as many. */
    private static final int MANY_HOLES = 1000;

    private static final long[] WORK_OF_MANY = {WeeksPlanner.WORK_PER_HOLE};

    /** So many of a green's spots the solver is given; with all it does not begin within a minute. */
    private static final int SPOTS_FOR_SOLVER = 60;

    private final DemoPlans plans = new DemoPlans(2);

    private PlanWeeks() {}

    public static void main(String[] arguments) {
        List<String> parts = arguments.length > 0 ? List.of(arguments) : List.of("summer", "spring", "twelve");
        new PlanWeeks().run(parts);
    }

    private void run(List<String> parts) {
        System.out.println("| | way | points | on resting ground | days with any | thirds off | s | s of processor |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        if (parts.contains("summer")) {
            Worth best = several("summer, 18 × 28", SUMMER, 18, 4 * WEEK);
            if (best.holesSetAside() > 0) {
                throw new IllegalStateException("four weeks in summer use ground that rests");
            }
        }
        if (parts.contains("spring")) {
            several("spring, 18 × 28", SPRING, 18, 4 * WEEK);
        }
        if (parts.contains("twelve")) {
            several("summer, 27 × 84", SUMMER, 27, 12 * WEEK);
        }
    }

    /** The plan by the most work. */
    private Worth several(String name, LocalDate first, int greens, int days) {
        WeeksRequest request = request(first, greens, days);
        WeeksWays ways = new WeeksWays(request, DemoPlans.POLICY);
        long holes = (long) greens * days;
        boolean many = holes >= MANY_HOLES;
        timed(name, "each hole after another", () -> Optional.of(ways.greedy()));
        timed(name, "day by day", () -> Optional.of(ways.own(0, SearchWatch.patient())));
        for (double seconds : many ? new double[0] : SECONDS) {
            String way = String.format(
                    Locale.ROOT, "solver, %d spots a green, %.0f of its seconds", SPOTS_FOR_SOLVER, seconds);
            timed(name, way, () -> ways.solver(new CpSat(), SPOTS_FOR_SOLVER, seconds));
        }
        for (double seconds : SECONDS) {
            long until = System.nanoTime() + Math.round(seconds * 1e9);
            String way = String.format(Locale.ROOT, "own search, stopped after %.0f s", seconds);
            timed(name, way, () -> Optional.of(ways.own(120_000 * holes, (done, all) -> System.nanoTime() < until)));
        }
        Worth last = null;
        for (long work : many ? WORK_OF_MANY : WORK_PER_HOLE) {
            Worth worth = timed(
                            name,
                            "own search, " + work + " priced a hole",
                            () -> Optional.of(ways.own(work * holes, SearchWatch.patient())))
                    .orElseThrow();
            if (last != null && worth.points() > last.points() * 1.01) {
                throw new IllegalStateException("more work made the plan worse");
            }
            last = worth;
        }
        whole(name, request);
        return last;
    }

    /** The program's whole answer, with reasons, alternatives, bounds and causes. */
    private static void whole(String name, WeeksRequest request) {
        long began = System.nanoTime();
        WeeksPlan plan =
                new WeeksPlanner(DemoPlans.POLICY, Optional.of(new CpSat())).plan(request, SearchWatch.patient());
        System.out.printf(
                Locale.ROOT,
                "| %s | whole answer | %.0f | %d, at least %d | | | %.1f | |%n",
                name,
                plan.points(),
                plan.holesSetAside(),
                plan.bounds().holesSetAside(),
                (System.nanoTime() - began) / 1e9);
        plan.shortages().forEach(shortage -> System.out.println("  " + shortage));
    }

    private static Optional<Worth> timed(String name, String way, Supplier<Optional<Worth>> plan) {
        long began = System.nanoTime();
        long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Optional<Worth> worth = plan.get();
        double processorSeconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / 1e9;
        double seconds = (System.nanoTime() - began) / 1e9;
        String found = worth.map(one -> String.format(
                        Locale.ROOT,
                        "%.0f | %d | %d | %d",
                        one.points(),
                        one.holesSetAside(),
                        one.daysSetAside(),
                        one.thirdsOff()))
                .orElse("no plan | | | ");
        System.out.printf(Locale.ROOT, "| %s | %s | %s | %.1f | %.1f |%n", name, way, found, seconds, processorSeconds);
        return worth;
    }

    private WeeksRequest request(LocalDate first, int greens, int days) {
        List<LocalDate> dates = first.datesUntil(first.plusDays(days)).toList();
        WeatherOutlook known = WeatherOutlook.of(WeatherSeries.of(SeattleWeather.read().days().stream()
                .filter(day -> day.day().isBefore(first))
                .toList()));
        WeeksRequest made = plans.weeks(dates, TurfState.empty(DemoPlans.ZONE), known, 1);
        List<GreenWeeks> all = new ArrayList<>(made.greens());
        for (int i = made.greens().size(); i < greens; i++) { // a third nine like the first
            GreenWeeks like = made.greens().get(i - made.greens().size());
            all.add(new GreenWeeks(
                    Integer.toString(i + 1), like.candidates(), like.past(), like.yesterdaysThird(), like.days()));
        }
        return new WeeksRequest(dates, all, made.sharedGreens(), made.rests(), made.busy(), made.seed());
    }
}
