package org.cupwright.policy;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Days of the week as they stand in settings: {@code mon wed fri}. */
final class WeekdayNames {
    private static final int LETTERS = 3;

    private WeekdayNames() {}

    /** Empty where a word is no day, a day stands twice, or there is none at all. */
    static Optional<Set<DayOfWeek>> read(String text) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String word : text.strip().split("[\\s,]+", -1)) {
            Optional<DayOfWeek> day = day(word.toLowerCase(Locale.ROOT));
            if (day.isEmpty() || !days.add(day.get())) {
                return Optional.empty();
            }
        }
        return Optional.of(days);
    }

    static String write(Set<DayOfWeek> days) {
        return days.stream().sorted().map(WeekdayNames::name).collect(Collectors.joining(" "));
    }

    private static Optional<DayOfWeek> day(String word) {
        return Stream.of(DayOfWeek.values())
                .filter(day -> word.length() >= LETTERS
                        && day.name().toLowerCase(Locale.ROOT).startsWith(word))
                .findFirst();
    }

    private static String name(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT).substring(0, LETTERS);
    }
}
