package org.cupwright.formats.points;

import java.util.HashMap;
import java.util.Map;

/** Numbers for the strips that files name, the same name in several files being the same strip. */
final class StripNames {
    /** More names than this are none of strips; what comes after them is left unsaid (our choice). */
    private static final int MOST_NAMES = 10_000;

    private static final int LONGEST_NAME = 40;

    private final Map<String, Integer> numbers = new HashMap<>();

    /** The number of a name, from 0; not a number for what can be none. */
    double number(String name) {
        String plain = name.strip();
        Integer known = numbers.get(plain);
        if (known != null) {
            return known;
        }
        if (plain.isEmpty() || plain.length() > LONGEST_NAME || numbers.size() >= MOST_NAMES) {
            return Double.NaN;
        }
        numbers.put(plain, numbers.size());
        return numbers.size() - 1;
    }
}
