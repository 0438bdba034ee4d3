package org.cupwright.app.desk.entry;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;

/** Something odd that was entered: its photo, and that somebody has read of it. */
public final class SeeToOdd {
    private final DataFolder folder;
    private final Clock clock;
    private final Supplier<UUID> ids;

    public SeeToOdd(DataFolder folder, Clock clock, Supplier<UUID> ids) {
        this.folder = folder;
        this.clock = clock;
        this.ids = ids;
    }

    /** Keeps that a person has read of something odd. */
    public RecordFact.Answer seen(Optional<String> courseId, String id, String person) {
        RecordFact.Answer answer = folder.read(stores -> {
            Course course = CourseChoice.course(stores, courseId);
            Fact odd = find(stores, course, id).fact();
            Instant now = clock.instant();
            Instant when =
                    now.isAfter(odd.happenedAt()) ? now : odd.happenedAt().plusMillis(1);
            Fact seen = new Fact(
                    ids.get(),
                    Fact.CURRENT_VERSION,
                    when,
                    now,
                    Optional.empty(),
                    person,
                    course.id(),
                    odd.hole(),
                    new OddSeen(odd.id()));
            return new RecordFact.Answer(
                    course, stores.policies().history(course.id()).at(day(course, when)), List.of(seen), List.of());
        });
        folder.write(stores -> answer.facts().forEach(stores.facts()::add));
        return answer;
    }

    private static LocalDate day(Course course, Instant when) {
        return LocalDate.ofInstant(when, course.frame().zone());
    }

    /** The photo of something odd. */
    public Photo photo(Optional<String> courseId, String id) {
        return folder.read(stores -> {
            OddThings.Thing thing = find(stores, CourseChoice.course(stores, courseId), id);
            String hash = thing.odd().photo().orElseThrow(() -> LogProblems.noPhoto(id, false));
            return stores.photos().find(hash).orElseThrow(() -> LogProblems.noPhoto(id, true));
        });
    }

    private static OddThings.Thing find(Stores stores, Course course, String given) {
        UUID id = FactIds.of(stores.facts(), course.id(), given);
        Instant when = stores.facts().find(id).orElseThrow().happenedAt();
        Fact fact = Logbook.of(stores.facts().between(course.id(), when, when.plusNanos(1))).facts().stream()
                .filter(known -> known.id().equals(id))
                .findFirst()
                .orElseThrow(() -> LogProblems.withdrawn(given));
        if (fact.payload() instanceof SomethingOdd odd) {
            return new OddThings.Thing(fact, odd);
        }
        throw LogProblems.notOdd(given, EntryForm.typed(fact.payload().kind()));
    }
}
