package org.cupwright.green.spline;

/**
 * Takes multiples of rows off a row: what factors, solutions and inverses of bands spend their time with.
 *
 * <p>The compiler does four or eight entries at once where rows are arrays of their own and every one is read at the
 * same place; of four rows at a time it makes the best code. Entries do not depend on how many it takes together, so
 * results are the same on every machine.
 */
final class Rows {
    private Rows() {}

    /** target −= a·one. */
    static void subtract(double[] target, double a, double[] one, int from, int to) {
        for (int k = from; k < to; k++) {
            target[k] -= a * one[k];
        }
    }

    /** target −= a·one + b·two + c·three + d·four. */
    static void subtract(
            double[] target,
            double a,
            double[] one,
            double b,
            double[] two,
            double c,
            double[] three,
            double d,
            double[] four,
            int from,
            int to) {
        for (int k = from; k < to; k++) {
            target[k] -= a * one[k] + b * two[k] + c * three[k] + d * four[k];
        }
    }

    /** target += one·other, entry by entry. */
    static void addProducts(double[] target, double[] one, double[] other) {
        for (int k = 0; k < target.length; k++) {
            target[k] += one[k] * other[k];
        }
    }

    /** target += one·other + two·second, entry by entry. */
    static void addProducts(double[] target, double[] one, double[] other, double[] two, double[] second) {
        for (int k = 0; k < target.length; k++) {
            target[k] += one[k] * other[k] + two[k] * second[k];
        }
    }

    static void divide(double[] target, double by, int from, int to) {
        for (int k = from; k < to; k++) {
            target[k] /= by;
        }
    }
}
