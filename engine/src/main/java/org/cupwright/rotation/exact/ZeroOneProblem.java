package org.cupwright.rotation.exact;

import java.util.ArrayList;
import java.util.List;

/**
 * Decisions of yes or no, numbered from 0, that have to go together, and what each yes costs. Filled once and then only
 * read; not safe for use by several threads while it is filled.
 */
public final class ZeroOneProblem {
    /**
     * Between so many of some decisions are yes.
     *
     * @param decisions their numbers
     * @param least the fewest
     * @param most the most
     */
    public record Count(int[] decisions, int least, int most) {}

    private final List<Long> costs = new ArrayList<>();
    private final List<Count> counts = new ArrayList<>();
    private final List<Integer> hinted = new ArrayList<>();

    /** A further decision: its number. */
    public int decision(long cost) {
        if (cost < 0) {
            throw new IllegalArgumentException("a yes costs nothing or more, not " + cost);
        }
        costs.add(cost);
        return costs.size() - 1;
    }

    public void exactlyOne(int... decisions) {
        between(1, 1, decisions);
    }

    public void atMostOne(int... decisions) {
        between(0, 1, decisions);
    }

    public void between(int least, int most, int... decisions) {
        counts.add(new Count(decisions.clone(), least, most));
    }

    /** Where to begin: a decision that is yes in an answer known already. */
    public void hint(int decision) {
        hinted.add(decision);
    }

    public int size() {
        return costs.size();
    }

    public long cost(int decision) {
        return costs.get(decision);
    }

    public boolean hasCosts() {
        return costs.stream().anyMatch(cost -> cost != 0);
    }

    public List<Count> counts() {
        return List.copyOf(counts);
    }

    public List<Integer> hinted() {
        return List.copyOf(hinted);
    }
}
