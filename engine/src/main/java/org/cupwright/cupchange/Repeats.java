package org.cupwright.cupchange;

import java.time.Instant;
import java.util.Comparator;

/** Which of two arrivals of one id counts. */
final class Repeats {
    /** A total order of arrivals with one id, so that the choice cannot depend on which came first. */
    private static final Comparator<Fact> ORDER = Comparator.comparing(
                    (Fact fact) -> fact.recordedAtServer().orElse(Instant.MAX))
            .thenComparing(Fact::recordedAtDevice)
            .thenComparing(Fact::happenedAt)
            .thenComparing(Fact::toString);

    private Repeats() {}

    static Fact first(Fact one, Fact other) {
        return ORDER.compare(one, other) <= 0 ? one : other;
    }
}
