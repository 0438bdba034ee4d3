package org.cupwright.rotation.counting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongPredicate;
import java.util.function.LongUnaryOperator;

/**
 * The least cost at which the greens still open can be filled, for every tally that can come up: dynamic programming
 * over counts.
 *
 * <p>A table may look at some splits only; the rest is then free, and what it says is a bound from below on what is
 * possible. With all splits it is the exact answer, at the price of a far larger table. Not safe for use by several
 * threads.
 */
public final class CountingTable {
    /** The cost of what cannot be done. Two of them can be added without overflow. */
    public static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

    private final List<List<Option>> greens;
    private final long mask;
    private final LongUnaryOperator endCost;
    private final LongPredicate worthAsking;
    private final TallyMap known = new TallyMap();

    /**
     * A table over the splits in {@code splits}.
     *
     * @param greens the options of each green, in the order in which the greens are filled
     * @param splits the splits the table looks at
     * @param endCost what a tally of all greens costs besides its options, {@link #IMPOSSIBLE} if it is not allowed;
     *     asked with the counts of the other splits at zero
     * @param worthAsking false for tallies known to lead nowhere, which keeps the table small; asked as {@code endCost}
     *     is
     */
    public CountingTable(
            List<List<Option>> greens, List<Split> splits, LongUnaryOperator endCost, LongPredicate worthAsking) {
        this.mask = splits.stream().mapToLong(Split::mask).reduce(Tally.HOLES, (a, b) -> a | b);
        this.greens = greens.stream().map(this::seen).toList();
        this.endCost = endCost;
        this.worthAsking = worthAsking;
    }

    /** The least cost of filling the greens that a tally leaves open, the end's cost included. */
    public long leastFrom(long tally) {
        long key = tally & mask;
        if (Tally.holes(key) == greens.size()) {
            return endCost.applyAsLong(key);
        }
        long before = known.get(key);
        if (before != TallyMap.ABSENT) {
            return before;
        }
        long least = worthAsking.test(key) ? leastOfOptions(key) : IMPOSSIBLE;
        known.put(key, least);
        return least;
    }

    private long leastOfOptions(long key) {
        long least = IMPOSSIBLE;
        for (Option option : greens.get(Tally.holes(key))) {
            least = Math.min(least, option.cost() + leastFrom(key + option.tally()));
            if (least == 0) {
                break; // no cost is negative: nothing is less
            }
        }
        return least;
    }

    /** The cheapest option of each kind that this table tells apart. */
    private List<Option> seen(List<Option> options) {
        Map<Long, Long> least = new LinkedHashMap<>();
        options.forEach(option -> least.merge(option.tally() & mask, option.cost(), Math::min));
        List<Option> seen = new ArrayList<>();
        least.forEach((tally, cost) -> seen.add(new Option(tally, cost)));
        return seen;
    }
}
