package org.cupwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import org.cupwright.rotation.counting.CheapestChoice;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.CountingTable;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Shares;
import org.cupwright.rotation.counting.Split;
import org.cupwright.rotation.counting.Tally;

/**
 * Ways of choosing one kind of position for each green, compared on invented prices; the figures of decision record
 * 0003: {@code DayCountingMethods [greens [cases [whole]]]}, 12 and 5 by default; without {@code whole} the table over
 * all counts is left out, which takes minutes and gigabytes for eighteen greens.
 */
public final class DayCountingMethods {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final int KINDS = 27;

    private DayCountingMethods() {}

    public static void main(String[] args) {
        int greens = args.length > 0 ? Integer.parseInt(args[0]) : 12;
        int cases = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        boolean whole = args.length > 2 && args[2].equals("whole");
        for (int seed = 1; seed <= cases; seed++) {
            List<List<Option>> options = options(new Random(seed), greens);
            long best = timed("two tables, best first", () -> guided(options));
            timed("one table, best first", () -> half(options));
            if (whole) {
                same(best, timed("one table over all counts", () -> wholeTable(options)));
            }
            long greedy = timed("greedy with exchanges", () -> exchanges(options));
            System.out.printf(
                    "seed %d: greedy with exchanges costs %.3f times the best%n", seed, (double) greedy / best);
        }
    }

    private interface Method {
        Result run();
    }

    private record Result(long cost, int steps) {}

    private static long timed(String name, Method method) {
        long start = CLOCK.getCurrentThreadCpuTime();
        Result result = method.run();
        System.out.printf(
                "  %-26s %9.1f ms, %8d steps, cost %d%n",
                name, (CLOCK.getCurrentThreadCpuTime() - start) / 1e6, result.steps, result.cost);
        return result.cost;
    }

    private static void same(long best, long other) {
        if (best != other) {
            throw new IllegalStateException("two exact methods disagree: " + best + " and " + other);
        }
    }

    private static List<List<Option>> options(Random random, int greens) {
        List<List<Option>> options = new ArrayList<>();
        for (int i = 0; i < greens; i++) {
            List<Option> kinds = new ArrayList<>();
            for (int kind = 0; kind < KINDS; kind++) {
                long tally = Tally.HOLE
                        + Split.THIRD.one(kind / 9)
                        + Split.LATERAL.one(kind / 3 % 3)
                        + Split.DIFFICULTY.one(kind % 3);
                double uneven = random.nextDouble();
                kinds.add(new Option(tally, Math.round(40_000 * uneven * uneven)));
            }
            options.add(kinds);
        }
        return options;
    }

    /** Even thirds or nothing; sides and difficulty at the default weights, in thousandths of a point. */
    private static long end(long tally) {
        if (Shares.THIRDS.holesOff(Split.THIRD.parts(tally)) > 0) {
            return CountingTable.IMPOSSIBLE;
        }
        return 10_000L * Shares.THIRDS.holesOff(Split.LATERAL.parts(tally))
                + 15_000L * Shares.THIRDS.holesOff(Split.DIFFICULTY.parts(tally));
    }

    private static CountingTable table(List<List<Option>> options, Split... splits) {
        CountingTable thirds = new CountingTable(options, List.of(Split.THIRD), DayCountingMethods::end, t -> true);
        return new CountingTable(
                options,
                List.of(splits),
                DayCountingMethods::end,
                tally -> thirds.leastFrom(tally) < CountingTable.IMPOSSIBLE);
    }

    private static Result guided(List<List<Option>> options) {
        CountingTable across = table(options, Split.THIRD, Split.LATERAL);
        CountingTable difficulty = table(options, Split.THIRD, Split.DIFFICULTY);
        return search(options, tally -> Math.max(across.leastFrom(tally), difficulty.leastFrom(tally)));
    }

    private static Result half(List<List<Option>> options) {
        CountingTable thirds = table(options, Split.THIRD);
        return search(options, thirds::leastFrom);
    }

    private static Result search(List<List<Option>> options, LongUnaryOperator bound) {
        Choice choice = CheapestChoice.find(
                        options, tally -> Tally.holes(tally) == options.size() ? end(tally) : bound.applyAsLong(tally))
                .orElseThrow();
        return new Result(choice.cost(), choice.stepsLookedAt());
    }

    private static Result wholeTable(List<List<Option>> options) {
        return new Result(table(options, Split.values()).leastFrom(0), 0);
    }

    /** Cheapest kind of each green, then the best single change or exchange of two, until none helps. */
    private static Result exchanges(List<List<Option>> options) {
        int[] chosen = new int[options.size()];
        int steps = 0;
        long cost = softCost(options, chosen);
        for (boolean better = true; better; steps++) {
            better = false;
            for (int i = 0; i < chosen.length; i++) {
                for (int j = i; j < chosen.length; j++) {
                    long changed = changeTwo(options, chosen, i, j, cost);
                    better |= changed < cost;
                    cost = Math.min(cost, changed);
                }
            }
        }
        return new Result(cost, steps);
    }

    private static long changeTwo(List<List<Option>> options, int[] chosen, int first, int second, long cost) {
        int[] best = {chosen[first], chosen[second]};
        long least = cost;
        for (int a = 0; a < KINDS; a++) {
            for (int b = 0; b < (first == second ? 1 : KINDS); b++) {
                chosen[second] = b;
                chosen[first] = a;
                long now = softCost(options, chosen);
                if (now < least) {
                    least = now;
                    best = new int[] {a, chosen[second]};
                }
            }
        }
        chosen[second] = best[1];
        chosen[first] = best[0];
        return least;
    }

    /** As {@link #end}, with uneven thirds at a price that a way out of them is always worth. */
    private static long softCost(List<List<Option>> options, int[] chosen) {
        long tally = 0;
        long cost = 0;
        for (int i = 0; i < chosen.length; i++) {
            Option option = options.get(i).get(chosen[i]);
            tally += option.tally();
            cost += option.cost();
        }
        return cost
                + 1_000_000L * Shares.THIRDS.holesOff(Split.THIRD.parts(tally))
                + 10_000L * Shares.THIRDS.holesOff(Split.LATERAL.parts(tally))
                + 15_000L * Shares.THIRDS.holesOff(Split.DIFFICULTY.parts(tally));
    }
}
