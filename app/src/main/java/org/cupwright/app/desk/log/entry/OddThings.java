package org.cupwright.app.desk.log.entry;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.DataFolder;
import org.cupwright.app.desk.Stores;
import org.cupwright.app.desk.log.CountingFacts;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.FactStore;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.log.Photo;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.PayloadKinds;

/** Odd things that were entered: which nobody has seen to yet, their photos, and that somebody has read of one. */
public final class OddThings {
    private static final Set<String> KINDS = PayloadKinds.names(SomethingOdd.class, OddSeen.class);

    /** What is urgent first, then the newest. */
    private static final Comparator<Thing> URGENT_FIRST = Comparator.<Thing, Integer>comparing(
                    thing -> -thing.odd().severity().ordinal())
            .thenComparing(thing -> thing.fact(), Fact.ORDER.reversed());

    private final DataFolder folder;
    private final Clock clock;
    private final Supplier<UUID> ids;

    public OddThings(DataFolder folder, Clock clock, Supplier<UUID> ids) {
        this.folder = folder;
        this.clock = clock;
        this.ids = ids;
    }

    /** Something odd, and the entry that says so. */
    public record Thing(Fact fact, SomethingOdd odd) {}

    /** What was entered before a moment and not marked as seen before it, the urgent first. */
    public static List<Thing> unseen(FactStore store, String courseId, Instant before) {
        List<Fact> all = new CountingFacts(store, courseId).ofKinds(KINDS, FactStore.LONG_AGO, before);
        Set<UUID> seen = all.stream()
                .filter(fact -> fact.payload() instanceof OddSeen)
                .map(fact -> ((OddSeen) fact.payload()).entry())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(fact -> fact.payload() instanceof SomethingOdd && !seen.contains(fact.id()))
                .map(fact -> new Thing(fact, (SomethingOdd) fact.payload()))
                .sorted(URGENT_FIRST)
                .toList();
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
            Thing thing = find(stores, CourseChoice.course(stores, courseId), id);
            String hash = thing.odd().photo().orElseThrow(() -> LogProblems.noPhoto(id, false));
            return stores.photos().find(hash).orElseThrow(() -> LogProblems.noPhoto(id, true));
        });
    }

    private static Thing find(Stores stores, Course course, String given) {
        UUID id = FactIds.of(stores.facts(), course.id(), given);
        Instant when = stores.facts().find(id).orElseThrow().happenedAt();
        Fact fact = Logbook.of(stores.facts().between(course.id(), when, when.plusNanos(1))).facts().stream()
                .filter(known -> known.id().equals(id))
                .findFirst()
                .orElseThrow(() -> LogProblems.withdrawn(given));
        if (fact.payload() instanceof SomethingOdd odd) {
            return new Thing(fact, odd);
        }
        throw LogProblems.notOdd(given, EntryForm.typed(fact.payload().kind()));
    }
}
