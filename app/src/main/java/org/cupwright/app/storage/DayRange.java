package org.cupwright.app.storage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * Days that can be spoken of. What lies outside is a slip of the fingers, a year 0206, or a day for which nothing is
 * known.
 */
public record DayRange(LocalDate first, LocalDate last) {
    /** No course has records of its hole locations from before (our choice). */
    public static final LocalDate EARLIEST = LocalDate.of(1990, 1, 1);

    /** As far ahead as anybody plans (our choice). */
    private static final int YEARS_AHEAD = 2;

    public static DayRange upTo(LocalDate today) {
        return new DayRange(EARLIEST, today.plusYears(YEARS_AHEAD));
    }

    /**
     * Refuses an entry of a day outside. A machine whose clock is behind may have entries of another whose clock is
     * right: what is ahead is ahead of when it was written down, or of now.
     *
     * @throws Problem when it lies outside
     */
    public static void check(Fact fact, Instant now) {
        Instant latest = fact.recordedAtDevice().isAfter(now) ? fact.recordedAtDevice() : now;
        upTo(day(latest)).within(day(fact.happenedAt()), "when");
    }

    private static LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, ZoneOffset.UTC);
    }

    /**
     * The day itself.
     *
     * @param field which field of the request it stands in
     * @throws Problem when it lies outside
     */
    public LocalDate within(LocalDate day, String field) {
        if (day.isBefore(first) || day.isAfter(last)) {
            throw Problem.of("dayRange", field, day, new Name(day.toString()), new Day(first), new Day(last));
        }
        return day;
    }
}
