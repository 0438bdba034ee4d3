package org.cupwright.app.desk.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.log.PhotoReading;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Something odd that was entered: its photo, and that somebody has read of it. */
public record SeeToOdd(Session session) {
    /** Keeps that a person has read of something odd. */
    public RecordFact.Answer seen(String id) {
        return session.decide(Right.RECORD, stores -> {
            Course course = session.course(stores);
            Fact odd = find(stores, course, id).fact();
            Instant now = session.now();
            Instant when = after(odd, now.isBefore(endOfToday(course)) ? now : endOfToday(course));
            Fact seen = new Fact(
                    session.ids().get(),
                    Fact.CURRENT_VERSION,
                    when,
                    now,
                    Optional.empty(),
                    session.person().name(),
                    course.id(),
                    odd.hole(),
                    new OddSeen(odd.id()));
            stores.facts().add(seen);
            return new RecordFact.Answer(
                    course, stores.policies().history(course.id()).at(day(course, when)), List.of(seen), List.of());
        });
    }

    /** On the invented course it stays one day whatever the clock says: seen to is what is seen to that day. */
    private Instant endOfToday(Course course) {
        LocalDate today = CourseToday.of(course, session.clock());
        return today.plusDays(1).atStartOfDay(course.frame().zone()).toInstant().minusMillis(1);
    }

    private static Instant after(Fact odd, Instant moment) {
        return moment.isAfter(odd.happenedAt()) ? moment : odd.happenedAt().plusMillis(1);
    }

    /**
     * Odd things that nobody has seen to.
     *
     * @param things the urgent first
     */
    public record Unseen(Course course, Policy policy, List<OddThings.Thing> things) {}

    /** What stands on a day; see {@link OddThings#standing}. */
    public Unseen unseen(LocalDate date) {
        return session.read(stores -> {
            Course course = session.course(stores);
            Policy policy = stores.policies().history(course.id()).at(date);
            return new Unseen(
                    course,
                    policy,
                    OddThings.standing(stores.facts(), course, date, CourseToday.of(course, session.clock())));
        });
    }

    private static LocalDate day(Course course, Instant when) {
        return LocalDate.ofInstant(when, course.frame().zone());
    }

    /** The photo of something odd: the picture, and nothing besides. */
    public Photo photo(String id) {
        return session.read(stores -> {
            OddThings.Thing thing = find(stores, session.course(stores), id);
            String hash = thing.odd().photo().orElseThrow(() -> LogProblems.photo("noPhoto", id));
            Photo kept = stores.photos().find(hash).orElseThrow(() -> LogProblems.photo("photoLost", id));
            return PhotoReading.bare(kept).orElseThrow(() -> LogProblems.photo("photoBroken", id));
        });
    }

    private static OddThings.Thing find(Stores stores, Course course, String given) {
        Fact fact = FactIds.of(stores.facts(), course.id(), given).counting();
        if (fact.payload() instanceof SomethingOdd odd) {
            return new OddThings.Thing(fact, odd);
        }
        throw Problem.of(
                "log.notOdd",
                "entry",
                given,
                new Name(given),
                new Name(LogProblems.typed(fact.payload().kind())));
    }
}
