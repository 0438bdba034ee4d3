package org.cupwright.app.office.green;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.cupwright.app.storage.DayRange;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A day for which a hole is set, as it stands in a form: {@code 2026-06-21:57}.
 *
 * @param date the day
 * @param seen the number of its plan when it was looked at; 0: there was none
 */
record ForDay(LocalDate date, long seen) {
    private static final String SEEN = ":[0-9]{1,18}";

    /** @throws Problem when it is none, or of no day that can be spoken of */
    static ForDay of(String text, LocalDate today) {
        int end = Math.max(0, text.indexOf(':'));
        try {
            LocalDate date = LocalDate.parse(text.substring(0, end));
            if (text.substring(end).matches(SEEN)) {
                return new ForDay(DayRange.upTo(today).within(date, "date"), Long.parseLong(text.substring(end + 1)));
            }
        } catch (DateTimeParseException wrong) {
            throw notADay(text);
        }
        throw notADay(text);
    }

    private static Problem notADay(String text) {
        return Problem.of("notADay", "date", text, new Name(text));
    }

    String text() {
        return date + ":" + seen;
    }
}
