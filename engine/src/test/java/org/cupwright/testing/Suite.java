package org.cupwright.testing;

/**
 * How many cases a random suite runs: the stated count in a full check, fewer otherwise, always printed; and its seed.
 */
public final class Suite {
    private Suite() {}

    /** The number of cases to run: {@code full} with {@code -Dcupwright.full=true}, else {@code reduced}. */
    public static int count(String suite, int full, int reduced) {
        int count = full() ? full : reduced;
        System.out.println("suite " + suite + ": " + count + " of " + full + ", seed " + seed());
        return count;
    }

    /** Whether this is a full check. */
    public static boolean full() {
        return Boolean.getBoolean("cupwright.full");
    }

    /** The seed of all random suites: {@code -Dcupwright.seed=N}, 1 unless told otherwise. */
    public static long seed() {
        return Long.getLong("cupwright.seed", 1L);
    }
}
