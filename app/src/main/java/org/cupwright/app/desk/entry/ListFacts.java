package org.cupwright.app.desk.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
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
public record ListFacts(Session session) {
    /** How many days are listed where nobody says: our choice, a week. */
    private static final int USUAL_DAYS = 7;

    /**
     * Entries as they count, corrections taken in.
     *
     * @param corrected those among them that do not say what was first recorded
     */
    public record Answer(
            Course course, Policy policy, LocalDate from, LocalDate to, List<Fact> facts, List<UUID> corrected) {}

    /**
     * Which entries count.
     *
     * @param from the first day; empty: a week up to the last
     * @param to the last day; empty: today on the course
     * @param hole of one hole only
     * @param kind of one kind only ({@link org.cupwright.cupchange.PayloadKinds})
     */
    public Answer of(Optional<LocalDate> from, Optional<LocalDate> to, Optional<String> hole, Optional<String> kind) {
        return session.read(stores -> {
            Course course = session.course(stores);
            hole.ifPresent(named -> HoleChoice.hole(course, named));
            LocalDate last = to.orElseGet(() -> CourseToday.of(course, session.clock()));
            LocalDate first = from.orElse(last.minusDays(USUAL_DAYS - 1));
            return listed(
                    stores,
                    course,
                    DaySpan.of(first, last),
                    fact -> (hole.isEmpty() || hole.equals(fact.hole()))
                            && kind.stream().allMatch(fact.payload().kind()::equals));
        });
    }

    private static Answer listed(Stores stores, Course course, DaySpan span, Predicate<Fact> wanted) {
        ZoneId zone = course.frame().zone();
        Instant start = span.from().atStartOfDay(zone).toInstant();
        Instant end = span.to().plusDays(1).atStartOfDay(zone).toInstant();
        List<Fact> recorded = stores.facts().between(course.id(), start, end);
        List<Fact> facts = FactsInEffect.of(recorded, start, end).stream()
                .filter(wanted)
                .sorted(readable(course))
                .toList();
        Policy policy = stores.policies().history(course.id()).at(span.to());
        return new Answer(course, policy, span.from(), span.to(), facts, corrected(recorded, facts));
    }

    /** By when they happened; what happened at once, by when it was written down, then in round order. */
    private static Comparator<Fact> readable(Course course) {
        List<String> holes = course.holes().stream().map(Hole::id).toList();
        return Comparator.comparing(Fact::happenedAt)
                .thenComparing(Fact::recordedAtDevice)
                .thenComparing(fact -> fact.hole().map(holes::indexOf).orElse(-1))
                .thenComparing(Fact::id);
    }

    private static List<UUID> corrected(List<Fact> recorded, List<Fact> counting) {
        Set<Fact> first = Set.copyOf(recorded);
        return counting.stream()
                .filter(fact -> !first.contains(fact))
                .map(Fact::id)
                .sorted(Comparator.comparing(UUID::toString))
                .toList();
    }
}
