package org.cupwright.testing;

import java.util.List;

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

    /** Every case of every group in a full check, else one of each group, another with another seed; always printed. */
    public static <T> List<T> ofEach(String suite, List<List<T>> groups) {
        List<T> all = groups.stream().flatMap(List::stream).toList();
        List<T> some = full()
                ? all
                : groups.stream()
                        .map(group -> group.get((int) Math.floorMod(seed(), (long) group.size())))
                        .toList();
        System.out.println("suite " + suite + ": " + some.size() + " of " + all.size() + ", seed " + seed());
        return some;
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
