package org.cupwright.app.desk.log;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/** Odd things that were entered and that nobody has seen to yet. */
public final class OddThings {
    private static final Set<String> KINDS = PayloadKinds.names(SomethingOdd.class, OddSeen.class);

    /** What is urgent first, then the newest. */
    private static final Comparator<Thing> URGENT_FIRST = Comparator.<Thing, Integer>comparing(
                    thing -> -thing.odd().severity().ordinal())
            .thenComparing(thing -> thing.fact(), Fact.ORDER.reversed());

    private OddThings() {}

    /** Something odd, and the entry that says so. */
    public record Thing(Fact fact, SomethingOdd odd) {}

    /**
     * What stands on a day, the urgent first: on the day on which it was seen, and on today, until somebody has seen
     * to it. On other days it would be in the way of what is theirs.
     *
     * @param today today on the course
     */
    public static List<Thing> standing(FactStore store, Course course, LocalDate date, LocalDate today) {
        ZoneId zone = course.frame().zone();
        LocalDate last = date.isAfter(today) ? date : today;
        return unseen(store, course.id(), last.plusDays(1).atStartOfDay(zone).toInstant()).stream()
                .filter(thing -> date.equals(today)
                        || date.equals(LocalDate.ofInstant(thing.fact().happenedAt(), zone)))
                .toList();
    }

    /** What was entered before a moment and not marked as seen before it, the urgent first. */
    private static List<Thing> unseen(FactStore store, String courseId, Instant before) {
        List<Fact> all = new FactsInEffect(store, courseId).ofKinds(KINDS, FactStore.LONG_AGO, before);
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
}
