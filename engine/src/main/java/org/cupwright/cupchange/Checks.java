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
            throw new IllegalArgumentException(
                    what + " " + value + " " + unit + " is outside " + least + " to " + greatest + " " + unit);
        }
    }

    static void between(String what, OptionalDouble value, double least, double greatest, String unit) {
        value.ifPresent(given -> between(what, given, least, greatest, unit));
    }
}
