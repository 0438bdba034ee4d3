package org.cupwright.rotation.counting;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.LongUnaryOperator;

/**
 * One option for each green at the least total cost: best-first search over tallies (A*).
 *
 * <p>Exact whenever {@code leastFrom} never says more than the true cost of what is left, and for a tally of all greens
 * says just its cost: the first full choice taken from the queue is then the cheapest there is. Two partial choices
 * with the same tally have the same future, so only the cheaper is kept. Should costs be equal, the order of options
 * decides.
 */
public final class CheapestChoice {
    private final List<List<Option>> greens;
    private final LongUnaryOperator leastFrom;
    private final PriorityQueue<Step> open = new PriorityQueue<>(Comparator.comparingLong(Step::atLeast)
            .thenComparing(Step::tally, Comparator.reverseOrder())
            .thenComparingLong(Step::cost));
    private final Set<Long> settled = new HashSet<>();

    private CheapestChoice(List<List<Option>> greens, LongUnaryOperator leastFrom) {
        this.greens = greens;
        this.leastFrom = leastFrom;
    }

    /**
     * What was found.
     *
     * @param options for each green, which of its options
     * @param cost the total, the end's cost included
     * @param tally the day's tally
     * @param stepsLookedAt how many partial choices were followed up: what the search cost
     */
    public record Choice(List<Integer> options, long cost, long tally, int stepsLookedAt) {}

    /**
     * The cheapest choice; empty where none is allowed.
     *
     * @param greens the options of each green
     * @param leastFrom a bound from below on the cost of filling what a tally leaves open; exact for a full tally;
     *     {@link CountingTable#IMPOSSIBLE} or more where that cannot be done
     */
    public static Optional<Choice> find(List<List<Option>> greens, LongUnaryOperator leastFrom) {
        if (greens.size() > Tally.MOST_HOLES) {
            throw new IllegalArgumentException(
                    "a plan of one day has at most " + Tally.MOST_HOLES + " greens, not " + greens.size());
        }
        return new CheapestChoice(greens, leastFrom).search();
    }

    private record Step(long tally, long cost, long atLeast, int option, Optional<Step> before) {}

    private Optional<Choice> search() {
        enter(0, 0, -1, Optional.empty());
        while (!open.isEmpty()) {
            Step step = open.remove();
            if (!settled.add(step.tally)) {
                continue;
            }
            int green = Tally.holes(step.tally);
            if (green == greens.size()) {
                return Optional.of(new Choice(path(step), step.atLeast, step.tally, settled.size()));
            }
            List<Option> options = greens.get(green);
            for (int i = 0; i < options.size(); i++) {
                enter(
                        step.tally + options.get(i).tally(),
                        step.cost + options.get(i).cost(),
                        i,
                        Optional.of(step));
            }
        }
        return Optional.empty();
    }

    private void enter(long tally, long cost, int option, Optional<Step> before) {
        if (settled.contains(tally)) {
            return;
        }
        long rest = leastFrom.applyAsLong(tally);
        if (rest < CountingTable.IMPOSSIBLE) {
            open.add(new Step(tally, cost, cost + rest, option, before));
        }
    }

    private static List<Integer> path(Step last) {
        Deque<Integer> options = new ArrayDeque<>();
        Optional<Step> step = Optional.of(last);
        while (step.isPresent() && step.get().before.isPresent()) {
            options.addFirst(step.get().option);
            step = step.get().before;
        }
        return List.copyOf(options);
    }
}
