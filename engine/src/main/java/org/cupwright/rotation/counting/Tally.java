package org.cupwright.rotation.counting;

/**
 * How many holes have been placed and how many of them lie in each part of each {@link Split}, packed into one long so
 * that adding a hole is one addition and a tally is its own key.
 */
public final class Tally {
    /** No plan of one day has more holes than this: six bits a count, ten counts in a long. */
    public static final int MOST_HOLES = 63;

    /** One hole placed, in no part of any split. */
    public static final long HOLE = 1L << 54;

    /** The bits that count the holes placed. */
    public static final long HOLES = (long) MOST_HOLES << 54;

    static final int BITS = 6;

    private Tally() {}

    public static int holes(long tally) {
        return (int) (tally >>> 54);
    }
}
