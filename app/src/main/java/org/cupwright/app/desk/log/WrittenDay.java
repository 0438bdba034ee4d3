package org.cupwright.app.desk.log;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;

/** A day as people and programs write it into tables. */
public final class WrittenDay {
    private static final DateTimeFormatter DOTTED = strict("d.M.uuuu");
    private static final DateTimeFormatter RUN_TOGETHER = strict("uuuuMMdd");

    private WrittenDay() {}

    private static DateTimeFormatter strict(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    }

    /**
     * Reads 2025-05-31, 31.5.2025 or 20250531.
     *
     * @throws java.time.DateTimeException for anything else, and for days that do not exist
     */
    public static LocalDate of(String text) {
        if (text.matches("[0-9]{8}")) {
            return LocalDate.parse(text, RUN_TOGETHER);
        }
        return text.indexOf('.') < 0 ? LocalDate.parse(text) : LocalDate.parse(text, DOTTED);
    }
}
