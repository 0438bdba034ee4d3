package org.cupwright.cupchange;

import java.util.OptionalDouble;

/** What can never be right, whoever typed it. What merely looks wrong is asked about in the package {@code check}. */
final class Checks {
    private Checks() {}

    static void word(String what, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(what + " is empty; type at least one letter");
        }
    }

    static void between(String what, double value, double least, double greatest, String unit) {
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(what + " of " + plain(value) + " " + unit + " is outside " + plain(least)
                    + " to " + plain(greatest) + " " + unit);
        }
    }

    static void notAbove(String what, double value, String other, double greatest, String unit) {
        if (!(value <= greatest)) {
            throw new IllegalArgumentException(what + ", " + plain(value) + " " + unit + ", is above " + other + ", "
                    + plain(greatest) + " " + unit);
        }
    }

    /** 18 rather than 18.0: the sentence is for people. */
    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    static void between(String what, OptionalDouble value, double least, double greatest, String unit) {
        value.ifPresent(given -> between(what, given, least, greatest, unit));
    }
}
