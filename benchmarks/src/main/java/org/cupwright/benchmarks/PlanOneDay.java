package org.cupwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.Term;

/**
 * How long one day's plan takes, on invented greens: {@code PlanOneDay [greens [candidates [days
 * [patchMetres]]]]}, 18, 300, 30 and 4 by default; with patches of 30 m candidates lie all over the greens.
 *
 * <p>Every plan is checked: thirds even or the reason named, no term better than its bound, and the same plan when
 * asked again. The times are the thread's own, so that other work on the machine does not count.
 */
public final class PlanOneDay {
    private PlanOneDay() {}

    public static void main(String[] args) {
        int greens = args.length > 0 ? Integer.parseInt(args[0]) : 18;
        int candidates = args.length > 1 ? Integer.parseInt(args[1]) : 300;
        int days = args.length > 2 ? Integer.parseInt(args[2]) : 30;
        double patchMetres = args.length > 3 ? Double.parseDouble(args[3]) : 4;
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        DayPlanner planner = new DayPlanner(Policy.defaults());
        double[] milliseconds = new double[days];
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        Map<Term, Double> bounds = new EnumMap<>(Term.class);
        for (int day = 0; day < days; day++) {
            DayRequest request = new DayRequest(
                    LocalDate.of(2026, 5, 1).plusDays(day),
                    MadeCandidates.greens(day + 1L, greens, candidates, patchMetres),
                    List.of(),
                    false,
                    1);
            long start = clock.getCurrentThreadCpuTime();
            DayPlan plan = planner.plan(request);
            milliseconds[day] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
            check(plan, planner.plan(request));
            for (Term term : Term.values()) {
                terms.merge(term, plan.terms().get(term) / days, Double::sum);
                bounds.merge(term, plan.bounds().get(term) / days, Double::sum);
            }
        }
        System.out.printf(
                "%d greens x %d candidates, %d days: first %.1f ms", greens, candidates, days, milliseconds[0]);
        Arrays.sort(milliseconds);
        System.out.printf(", median %.1f ms, longest %.1f ms%n", milliseconds[days / 2], milliseconds[days - 1]);
        for (Term term : Term.values()) {
            System.out.printf(
                    "  %-18s mean %8.3f, mean bound %8.3f %s%n", term, terms.get(term), bounds.get(term), term.unit());
        }
    }

    private static void check(DayPlan plan, DayPlan again) {
        if (!plan.equals(again)) {
            throw new IllegalStateException("asked twice, planned twice differently: " + plan.date());
        }
        boolean named =
                plan.findings().stream().anyMatch(finding -> finding.key().equals("rotation.finding.thirds"));
        if (named != plan.thirdsOff() > 0) {
            throw new IllegalStateException("thirds are off by " + plan.thirdsOff() + " in silence on " + plan.date());
        }
        for (Term term : Term.values()) {
            if (plan.terms().get(term) < plan.bounds().get(term) - 1e-4) {
                throw new IllegalStateException(term + " is better than its bound on " + plan.date());
            }
        }
    }
}
