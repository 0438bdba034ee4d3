package org.cupwright.app.desk.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;

/** Asks whether the clock is right when the logbook has entries that it says were written down in time to come. */
final class ClockBehind {
    /** Clocks differ by so much (our choice). */
    private static final Duration CLOCK_ERROR = Duration.ofMinutes(10);

    /** As far ahead as entries are looked for (our choice). */
    private static final Duration AHEAD = Duration.ofDays(100 * 366L);

    private ClockBehind() {}

    /** The invented course's days have nothing to do with the clock. */
    static void ask(FactStore store, Course course, Instant now) {
        if (course.id().equals(DemoCourse.ID)) {
            return;
        }
        Instant late = now.plus(CLOCK_ERROR);
        new FactsInEffect(store, course.id())
                .between(late, now.plus(AHEAD)).stream()
                        .filter(fact -> fact.recordedAtDevice().isAfter(late))
                        .reduce((earlier, later) -> later)
                        .ifPresent(newest -> {
                            throw LogProblems.asked(
                                    question(newest, course, now),
                                    newest.payload().kind());
                        });
    }

    private static Message question(Fact newest, Course course, Instant now) {
        return Message.of(
                "problem.log.clockBehind",
                new Day(day(newest.recordedAtDevice(), course)),
                new Name(newest.person()),
                new Day(day(now, course)));
    }

    private static LocalDate day(Instant moment, Course course) {
        return LocalDate.ofInstant(moment, course.frame().zone());
    }
}
