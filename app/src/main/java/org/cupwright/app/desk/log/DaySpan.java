package org.cupwright.app.desk.log;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Problem;

/** The days from one to another, both included. */
public record DaySpan(LocalDate from, LocalDate to) {
    /** More days than a century has are a slip of the pen (our choice). */
    private static final long MOST_DAYS = 36_525;

    /**
     * @throws Problem if the first day is after the last
     */
    public static DaySpan of(LocalDate from, LocalDate to) {
        if (from.isAfter(to)) {
            throw problem(
                    Message.of("problem.log.backwards", new Day(from), new Day(to)), from, to, "try.log.backwards");
        }
        return new DaySpan(from, to);
    }

    /**
     * These days, to be shown one by one.
     *
     * @throws Problem if they are more than a century's
     */
    public DaySpan shown() {
        long days = ChronoUnit.DAYS.between(from, to) + 1;
        if (days > MOST_DAYS) {
            throw problem(Message.of("problem.log.span", new Count(days)), from, to, "try.log.span");
        }
        return this;
    }

    private static Problem problem(Message what, LocalDate from, LocalDate to, String tryThis) {
        return Problem.of(what, "span", from + ", " + to, Message.of(tryThis));
    }
}
