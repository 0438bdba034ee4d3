package org.cupwright.formats.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** A day as people and programs write it into tables. */
public final class WrittenDay {
    private static final DateTimeFormatter DOTTED = strict("d.M.uuuu");
    private static final DateTimeFormatter RUN_TOGETHER = strict("uuuuMMdd");

    /** Year and month of what is written as a day, whether or not the month has it. */
    private static final Pattern YEAR_FIRST = Pattern.compile("(?<y>[0-9]{4})-?(?<m>[0-9]{2})-?[0-9]{2}");

    private static final Pattern DAY_FIRST = Pattern.compile("[0-9]{1,2}[.](?<m>[0-9]{1,2})[.](?<y>[0-9]{4})");

    private WrittenDay() {}

    private static DateTimeFormatter strict(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    }

    /**
     * Reads 2025-05-31, 31.5.2025 or 20250531.
     *
     * @throws DateTimeException for anything else, and for days that do not exist
     */
    public static LocalDate of(String text) {
        if (text.matches("[0-9]{8}")) {
            return LocalDate.parse(text, RUN_TOGETHER);
        }
        return text.indexOf('.') < 0 ? LocalDate.parse(text) : LocalDate.parse(text, DOTTED);
    }

    /** The same, empty where {@link #of} fails. */
    public static Optional<LocalDate> find(String text) {
        try {
            return Optional.of(of(text));
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }

    /** A day of a line of a table. */
    public static LocalDate inTable(String text) {
        return find(text).orElseThrow(() -> Problem.of(whyNot(text), Message.of("day.try")));
    }

    /** Why a text is not a day: the month is shorter, or it is not written as one. */
    public static Message whyNot(String text) {
        for (Pattern pattern : new Pattern[] {YEAR_FIRST, DAY_FIRST}) {
            Matcher matcher = pattern.matcher(text);
            Optional<Integer> length =
                    matcher.matches() ? length(matcher.group("y"), matcher.group("m")) : Optional.empty();
            if (length.isPresent()) {
                return Message.of("day.noSuch", new Name(text), new Count(length.get()));
            }
        }
        return Message.of("day.none", new Name(text));
    }

    private static Optional<Integer> length(String year, String month) {
        int number = Integer.parseInt(month);
        return number < 1 || number > 12
                ? Optional.empty()
                : Optional.of(YearMonth.of(Integer.parseInt(year), number).lengthOfMonth());
    }
}
