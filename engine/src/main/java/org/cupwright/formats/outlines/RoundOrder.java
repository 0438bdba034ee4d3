package org.cupwright.formats.outlines;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holes as a round goes through them: 1, 2, 7, 7b, 8, 10, then B1, B2, B10, G1. */
public final class RoundOrder {
    private static final Pattern NAME = Pattern.compile("([A-Za-z]*)([0-9]{0,8})(.*)");

    private RoundOrder() {}

    /** Compares hole names. */
    public static Comparator<String> byName() {
        Comparator<Matcher> byParts = Comparator.<Matcher, String>comparing(parts -> parts.group(1))
                .thenComparing(parts -> parts.group(2).isEmpty() ? 0 : Integer.parseInt(parts.group(2)))
                .thenComparing(parts -> parts.group(3));
        return Comparator.comparing(RoundOrder::parts, byParts).thenComparing(Comparator.naturalOrder());
    }

    private static Matcher parts(String name) {
        Matcher parts = NAME.matcher(name);
        if (!parts.matches()) {
            throw new IllegalArgumentException("not a hole's name: " + name);
        }
        return parts;
    }
}
