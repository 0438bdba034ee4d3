package org.cupwright.rotation.counting;

/**
 * What share of the holes each part of a split should have, as three whole numbers in proportion: 1, 1, 1 for thirds.
 *
 * <p>Where the number of holes does not divide, every rounding that keeps each part between its share rounded down and
 * up is as good as any other: ten holes by thirds are 4, 3, 3 in any order.
 */
public record Shares(int first, int second, int third) {
    public static final Shares THIRDS = new Shares(1, 1, 1);

    public Shares {
        if (Math.min(first, Math.min(second, third)) < 0 || first + second + third == 0) {
            throw new IllegalArgumentException("not shares: " + first + ", " + second + ", " + third);
        }
    }

    /** The fewest holes a part should have, of so many. */
    public int least(int part, int holes) {
        return holes * share(part) / sum();
    }

    /** The most holes a part should have, of so many. */
    public int most(int part, int holes) {
        return (holes * share(part) + sum() - 1) / sum();
    }

    /** How many holes would have to be in another part for the shares to be kept; 0 when they are. */
    public int holesOff(Parts parts) {
        int over = 0;
        int under = 0;
        for (int part = 0; part < 3; part++) {
            over += Math.max(0, parts.count(part) - most(part, parts.total()));
            under += Math.max(0, least(part, parts.total()) - parts.count(part));
        }
        return Math.max(over, under);
    }

    private int share(int part) {
        return new Parts(first, second, third).count(part);
    }

    private int sum() {
        return first + second + third;
    }
}
