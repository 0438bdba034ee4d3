package org.cupwright.rotation.counting;

/**
 * One thing that may be chosen for a green.
 *
 * @param tally what it adds to the day's tally; counts one hole
 * @param cost what it costs by itself, at least 0
 */
public record Option(long tally, long cost) {
    public Option {
        if (Tally.holes(tally) != 1 || cost < 0) {
            throw new IllegalArgumentException("an option is one hole at no negative cost: " + tally + ", " + cost);
        }
    }
}
