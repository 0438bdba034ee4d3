package org.cupwright.rotation.counting;

/**
 * Counts of the three parts of a split.
 *
 * @param first front, left or easier
 * @param second middle, centre or medium
 * @param third back, right or harder
 */
public record Parts(int first, int second, int third) {
    public int total() {
        return first + second + third;
    }

    public int count(int part) {
        return switch (part) {
            case 0 -> first;
            case 1 -> second;
            case 2 -> third;
            default -> throw new IndexOutOfBoundsException("a split has parts 0 to 2, not " + part);
        };
    }
}
