package org.cupwright.cupchange;

import java.util.OptionalDouble;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.message.Message.Translated;

/** What can never be right, whoever typed it. What merely looks wrong is asked about in the package {@code check}. */
final class Checks {
    private Checks() {}

    /** Refuses an empty text; what it should say is named by a last part of the keys {@code quantity}. */
    static void word(String what, String value) {
        if (value.isBlank()) {
            throw new ImpossibleFact("empty", quantity(what));
        }
    }

    static void between(String what, double value, double least, double greatest, String unit) {
        if (!(value >= least && value <= greatest)) {
            throw new ImpossibleFact(
                    "outside", quantity(what), number(value), number(least), number(greatest), new Name(unit));
        }
    }

    static void between(String what, OptionalDouble value, double least, double greatest, String unit) {
        value.ifPresent(given -> between(what, given, least, greatest, unit));
    }

    static void count(String what, int value, int greatest) {
        if (value < 0 || value > greatest) {
            throw new ImpossibleFact("count", quantity(what), number(value), number(greatest));
        }
    }

    private static Translated quantity(String what) {
        return new Translated("quantity." + what);
    }

    static PlainNumber number(double value) {
        return new PlainNumber(value);
    }
}
