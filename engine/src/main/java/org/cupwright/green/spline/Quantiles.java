package org.cupwright.green.spline;

/**
 * Values that stand at a place when all are sorted, without sorting them all (Hoare, Communications of the
 * ACM 4, 1961).
 */
final class Quantiles {
    private Quantiles() {}

    /** The middle value, or the mean of the two in the middle; the values are put into another order. */
    static double median(double[] values) {
        int middle = values.length / 2;
        double upper = at(middle, values);
        if (values.length % 2 == 1) {
            return upper;
        }
        double lower = values[0];
        for (int i = 1; i < middle; i++) {
            lower = Math.max(lower, values[i]);
        }
        return (lower + upper) / 2;
    }

    /** The value at a place counted from the least; none before it is greater then, and none behind it less. */
    static double at(int place, double[] values) {
        int from = 0;
        int to = values.length - 1;
        while (from < to) {
            double pivot = values[from + (to - from) / 2];
            int i = from;
            int j = to;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swapped = values[i];
                    values[i++] = values[j];
                    values[j--] = swapped;
                }
            }
            if (place <= j) {
                to = j;
            } else if (place >= i) {
                from = i;
            } else {
                return values[place];
            }
        }
        return values[place];
    }
}
