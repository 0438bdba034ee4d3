package org.cupwright.app.desk.log;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.cupwright.app.storage.FactStore;
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

    /** What was entered before a moment and not marked as seen before it, the urgent first. */
    public static List<Thing> unseen(FactStore store, String courseId, Instant before) {
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
