package org.cupwright.turf.state;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import org.cupwright.cupchange.Fact;

/** Where in the logbook's order a state stands. */
public record FactMark(Instant happenedAt, UUID id) implements Comparable<FactMark> {
    private static final Comparator<FactMark> ORDER =
            Comparator.comparing(FactMark::happenedAt).thenComparing(FactMark::id);

    static FactMark of(Fact fact) {
        return new FactMark(fact.happenedAt(), fact.id());
    }

    @Override
    public int compareTo(FactMark other) {
        return ORDER.compare(this, other);
    }
}
