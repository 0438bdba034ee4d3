package org.cupwright.rotation.weeks;

import java.util.Arrays;
import java.util.List;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.counting.Split;

/**
 * What the greens of one day cost together, in thousandths of a point: front, middle and back, left and right, easier
 * and harder, and a day that plays as hard as the others.
 */
final class DayBalance {
    private static final int UNKNOWN = -1;

    private final Aims aims;
    private final HolePrices prices;
    private final double evenDays;
    private final double usualLeave;
    private final int[][] known = new int[Split.values().length][];

    /**
     * @param evenDays points for each per cent that a day is harder or easier than usual
     * @param usualLeave the leaves of a usual day's holes together, m; 0 where none is known
     */
    DayBalance(Aims aims, HolePrices prices, double evenDays, double usualLeave) {
        this.aims = aims;
        this.prices = prices;
        this.evenDays = evenDays;
        this.usualLeave = usualLeave;
        for (Split split : Split.values()) {
            int bits = Long.bitCount(split.mask());
            known[split.ordinal()] = new int[1 << bits];
            Arrays.fill(known[split.ordinal()], UNKNOWN);
        }
    }

    /**
     * @param tally the day's counts
     * @param leaveOff by how much the leaves of its holes together are more than their greens' usual, m
     */
    long cost(long tally, double leaveOff) {
        long cost = HolePrices.thousandths(evenDays * percentOff(leaveOff));
        for (Split split : Split.values()) {
            cost += cost(split, tally & split.mask());
        }
        return cost;
    }

    /** By how many per cent a day is harder or easier than usual. */
    double percentOff(double leaveOff) {
        return usualLeave > 0 ? 100 * Math.abs(leaveOff) / usualLeave : 0;
    }

    private int cost(Split split, long counts) {
        int key = (int) (counts >>> Long.numberOfTrailingZeros(split.mask()));
        int[] costs = known[split.ordinal()];
        if (costs[key] == UNKNOWN) {
            costs[key] = Math.toIntExact(workedOut(split, counts));
        }
        return costs[key];
    }

    private long workedOut(Split split, long counts) {
        return switch (split) {
            case THIRD -> prices.thirdsOff(aims.thirdsOff(counts));
            case LATERAL -> sum(List.of(Term.LEFT_RIGHT, Term.LATERAL), counts);
            case DIFFICULTY -> sum(List.of(Term.DIFFICULTY), counts);
        };
    }

    private long sum(List<Term> terms, long counts) {
        return terms.stream()
                .mapToLong(term -> HolePrices.thousandths(aims.weight(term) * aims.ofDay(term, counts)))
                .sum();
    }
}
