package org.cupwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.holelocation.Verdict;
import org.cupwright.published.SeattleWeather;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * Weeks of hole locations on the invented course, in the weather of a real place as it was known on the first morning
 * (vega-datasets, seattle-weather.csv): four weeks of eighteen greens and twelve of twenty-seven, day by day and with
 * more and more work. Prints what each plan falls short of and how long it took; stops when work makes a plan worse, or
 * when four weeks in summer need ground that rests.
 */
public final class PlanWeeks {
    private static final int WEEK = 7;
    private static final int[] FOUR_WEEKS = {18, 4 * WEEK};
    private static final int[] TWELVE_WEEKS = {27, 12 * WEEK};
    private static final LocalDate SUMMER = LocalDate.of(2014, 7, 1);
    private static final LocalDate SPRING = LocalDate.of(2014, 4, 10);
    private static final long[] WORK_PER_HOLE = {0, 10_000, WeeksPlanner.WORK_PER_HOLE, 120_000};

    private final DemoPlans plans = new DemoPlans(2);

    private PlanWeeks() {}

    public static void main(String[] arguments) {
        new PlanWeeks().run();
    }

    private void run() {
        System.out.println(
                "| | priced a hole | points | on resting ground | with care | thirds off | a day off at most "
                        + "| s | s of processor |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        WeeksPlan summer = several("summer", SUMMER, FOUR_WEEKS);
        if (summer.onRestingGround() > 0) {
            throw new IllegalStateException("four weeks in summer use ground that rests");
        }
        several("spring", SPRING, FOUR_WEEKS);
        several("summer", SUMMER, TWELVE_WEEKS);
    }

    /** The plan by the most work. */
    private WeeksPlan several(String season, LocalDate first, int[] greensAndDays) {
        WeeksRequest request = request(first, greensAndDays[0], greensAndDays[1]);
        WeeksPlan last = null;
        for (long work : WORK_PER_HOLE) {
            long began = System.nanoTime();
            long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            WeeksPlan plan = new WeeksPlanner(DemoPlans.POLICY)
                    .plan(request, work * greensAndDays[0] * greensAndDays[1], SearchWatch.patient());
            double processorSeconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / 1e9;
            String name = season + ", " + greensAndDays[0] + " × " + greensAndDays[1];
            print(name, work, plan, (System.nanoTime() - began) / 1e9, processorSeconds);
            if (last != null && plan.points() > last.points() * 1.01) {
                throw new IllegalStateException("more work made the plan worse");
            }
            last = plan;
        }
        return last;
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

    private static void print(String name, long work, WeeksPlan plan, double seconds, double processorSeconds) {
        long care = plan.days().stream()
                .flatMap(day -> day.holes().stream())
                .filter(hole -> hole.candidate().verdict() != Verdict.PASS)
                .count();
        int thirds = plan.days().stream().mapToInt(DayPlan::thirdsOff).sum();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %.0f | %d | %d | %d | %.2f %% | %.1f | %.1f |%n",
                name,
                work,
                plan.points(),
                plan.onRestingGround(),
                care,
                thirds,
                plan.hardestOffPercent(),
                seconds,
                processorSeconds);
    }
}
