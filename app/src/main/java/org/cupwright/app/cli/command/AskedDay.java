package org.cupwright.app.cli.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cupwright.formats.table.WrittenDay;
import picocli.CommandLine.TypeConversionException;

/**
 * A day as it is typed: by its date, or as seen from the course's today.
 *
 * @param date the date; empty where it is seen from today
 * @param daysFromToday how many days after today; counts where there is no date
 */
public record AskedDay(Optional<LocalDate> date, int daysFromToday) {
    private static final Map<String, Integer> WORDS = Map.of("yesterday", -1, "today", 0, "tomorrow", 1);

    /** The last that has four digits. */
    private static final int LATEST_YEAR = 9999;

    /** What is typed; picocli would speak of classes. */
    public static AskedDay of(String text) {
        Integer word = WORDS.get(text.toLowerCase(Locale.ROOT));
        return word == null ? new AskedDay(Optional.of(dated(text)), 0) : new AskedDay(Optional.empty(), word);
    }

    private static LocalDate dated(String text) {
        try {
            LocalDate day = WrittenDay.of(text);
            if (day.getYear() < 1 || day.getYear() > LATEST_YEAR) {
                throw new TypeConversionException("there is no such day");
            }
            return day;
        } catch (DateTimeException notOne) {
            throw new TypeConversionException((text.matches("[0-9-]{8,10}") ? "there is no such day; " : "")
                    + "give a day as 2026-05-31, yesterday, today or tomorrow");
        }
    }

    LocalDate on(LocalDate today) {
        return date.orElseGet(() -> today.plusDays(daysFromToday));
    }
}
