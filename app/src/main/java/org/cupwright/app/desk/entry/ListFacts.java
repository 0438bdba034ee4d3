package org.cupwright.app.desk.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.log.DaySpan;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.Fact;
import org.cupwright.policy.Policy;

/** Reads the logbook. */
public final class ListFacts {
    /** How many days are listed where nobody says: our choice, a week. */
    private static final int USUAL_DAYS = 7;

    private final Session session;

    public ListFacts(Session session) {
        this.session = session;
    }

    /**
     * Which entries are wanted.
     *
     * @param from the first day; empty: a week up to the last
     * @param to the last day; empty: today on the course
     * @param hole of one hole only
     * @param kind of one kind only
     */
    public record Wanted(
            Optional<LocalDate> from, Optional<LocalDate> to, Optional<String> hole, Optional<String> kind) {}

    /**
     * Entries as they count, corrections taken in.
     *
     * @param corrected those among them that do not say what was first recorded
     */
    public record Answer(
            Course course, Policy policy, LocalDate from, LocalDate to, List<Fact> facts, Map<UUID, Fact> corrected) {}

    public Answer of(Wanted wanted) {
        return session.read(stores -> listed(stores, wanted));
    }

    private Answer listed(Stores stores, Wanted wanted) {
        Course course = session.course(stores);
        wanted.hole().ifPresent(hole -> HoleChoice.hole(course, hole));
        Optional<String> kind = wanted.kind().map(given -> EntryForm.of(given).kind());
        LocalDate to = wanted.to().orElseGet(() -> CourseToday.of(course, session.clock()));
        DaySpan span = DaySpan.of(wanted.from().orElse(to.minusDays(USUAL_DAYS - 1)), to);
        ZoneId zone = course.frame().zone();
        Instant start = span.from().atStartOfDay(zone).toInstant();
        Instant end = span.to().plusDays(1).atStartOfDay(zone).toInstant();
        List<Fact> recorded = stores.facts().between(course.id(), start, end);
        List<Fact> facts = FactsInEffect.of(recorded, start, end).stream()
                .filter(fact -> wanted.hole().isEmpty() || wanted.hole().equals(fact.hole()))
                .filter(fact ->
                        kind.isEmpty() || kind.get().equals(fact.payload().kind()))
                .sorted(readable(course))
                .toList();
        return new Answer(
                course,
                stores.policies().history(course.id()).at(to),
                span.from(),
                to,
                facts,
                corrected(recorded, facts));
    }

    /** By when they happened; what happened at once, by when it was written down, then in round order. */
    private static Comparator<Fact> readable(Course course) {
        List<String> holes = course.holes().stream().map(Hole::id).toList();
        return Comparator.comparing(Fact::happenedAt)
                .thenComparing(Fact::recordedAtDevice)
                .thenComparing(fact -> fact.hole().map(holes::indexOf).orElse(-1))
                .thenComparing(Fact::id);
    }

    private static Map<UUID, Fact> corrected(List<Fact> recorded, List<Fact> counting) {
        Map<UUID, Fact> first = new HashMap<>();
        recorded.forEach(fact -> first.put(fact.id(), fact));
        Map<UUID, Fact> corrected = new HashMap<>();
        for (Fact fact : counting) {
            if (!fact.equals(first.get(fact.id()))) {
                corrected.put(fact.id(), first.get(fact.id()));
            }
        }
        return corrected;
    }
}
