package org.cupwright.rotation.counting;

/**
 * A way of sorting a day's holes into three parts, and where its three counts stand in a {@link Tally}.
 *
 * <p>Parts are numbered 0 to 2, in the order of the enum they come from (front, middle, back and so on).
 */
public enum Split {
    THIRD(0),
    LATERAL(3),
    DIFFICULTY(6);

    private final int firstCount;

    Split(int firstCount) {
        this.firstCount = firstCount;
    }

    /** The tally of one hole in one part. */
    public long one(int part) {
        return 1L << shift(part);
    }

    /** How many holes of a tally are in each part. */
    public Parts parts(long tally) {
        return new Parts(count(tally, 0), count(tally, 1), count(tally, 2));
    }

    /** The bits of a tally that belong to this split. */
    public long mask() {
        long threeCounts = (1L << (3 * Tally.BITS)) - 1;
        return threeCounts << shift(0);
    }

    private int count(long tally, int part) {
        return (int) (tally >>> shift(part)) & Tally.MOST_HOLES;
    }

    private int shift(int part) {
        return Tally.BITS * (firstCount + part);
    }
}
