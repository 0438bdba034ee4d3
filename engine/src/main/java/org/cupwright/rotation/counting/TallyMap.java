package org.cupwright.rotation.counting;

import java.util.Arrays;

/**
 * Costs by tally: a map of primitive longs with open addressing, since boxing them takes most of a plan's time (see
 * docs/decisions/0003).
 */
final class TallyMap {
    /** What {@link #get} answers for a tally that has no cost; no cost is negative. */
    static final long ABSENT = -1;

    private static final long FREE = -1;

    private long[] tallies = filled(1 << 10);
    private long[] costs = new long[1 << 10];
    private int size;

    long get(long tally) {
        int slot = slot(tallies, tally);
        return tallies[slot] == tally ? costs[slot] : ABSENT;
    }

    void put(long tally, long cost) {
        if (2 * size >= tallies.length) {
            grow();
        }
        int slot = slot(tallies, tally);
        size += tallies[slot] == tally ? 0 : 1;
        tallies[slot] = tally;
        costs[slot] = cost;
    }

    private void grow() {
        long[] moreTallies = filled(2 * tallies.length);
        long[] moreCosts = new long[moreTallies.length];
        for (int i = 0; i < tallies.length; i++) {
            if (tallies[i] != FREE) {
                int slot = slot(moreTallies, tallies[i]);
                moreTallies[slot] = tallies[i];
                moreCosts[slot] = costs[i];
            }
        }
        tallies = moreTallies;
        costs = moreCosts;
    }

    /** Where a tally stands or, if it is not there, may be put: lengths are powers of two, and never is a map full. */
    private static int slot(long[] tallies, long tally) {
        long mixed = tally * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & tallies.length - 1;
        while (tallies[slot] != FREE && tallies[slot] != tally) {
            slot = slot + 1 & tallies.length - 1;
        }
        return slot;
    }

    private static long[] filled(int length) {
        long[] free = new long[length];
        Arrays.fill(free, FREE);
        return free;
    }
}
