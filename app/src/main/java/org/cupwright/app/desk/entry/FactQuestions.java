package org.cupwright.app.desk.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.check.FactCheck;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;

/** Asks before an entry is kept that looks wrong. */
public final class FactQuestions {
    /** Clocks differ by so much (our choice). */
    private static final Duration CLOCK_ERROR = Duration.ofMinutes(10);

    /** As far ahead as entries are looked for (our choice). */
    private static final Duration AHEAD = Duration.ofDays(100 * 366L);

    private FactQuestions() {}

    /** Refuses a fact with the first question there is about it, unless the person is sure. */
    static void ask(Course course, Fact fact, boolean sure) {
        Optional<Message> question = sure ? Optional.empty() : first(course, fact);
        if (question.isPresent()) {
            String kind = LogProblems.typed(fact.payload().kind());
            String where = fact.hole().map(hole -> hole + ", " + kind).orElse(kind);
            throw LogProblems.asked(question.get(), where);
        }
    }

    /** The first question there is about a fact. */
    public static Optional<Message> first(Course course, Fact fact) {
        return new FactCheck(course).check(fact).stream().findFirst();
    }

    /**
     * Refuses where the logbook has entries that it says were written down in time to come: the clock may be wrong. The
     * invented course's days have nothing to do with the clock.
     */
    static void askClock(FactStore store, Course course, Instant now) {
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

    /** Asks about an entry that says it was written down in time to come. */
    public static Optional<Message> ahead(Fact fact, Course course, Instant now) {
        return fact.recordedAtDevice().isAfter(now.plus(CLOCK_ERROR))
                ? Optional.of(question(fact, course, now))
                : Optional.empty();
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
