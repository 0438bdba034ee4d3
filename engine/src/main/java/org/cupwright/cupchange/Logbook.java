package org.cupwright.cupchange;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BinaryOperator;

/**
 * The facts of one course that count: repeated ones once, corrected ones as corrected, withdrawn ones gone, in the
 * order in which they happened ({@link Fact#ORDER}).
 *
 * <p>The result depends on the facts alone, never on the order in which they arrived or how often. Two facts that claim
 * one id with different contents are a defect of a device; the one the server received first counts, then the one
 * recorded first, then the first by its text.
 */
public final class Logbook {
    /** A total order of arrivals with one id, so that the choice among them cannot depend on which came first. */
    private static final Comparator<Fact> FIRST_COUNTS = Comparator.comparing(
                    (Fact fact) -> fact.recordedAtServer().orElse(Instant.MAX))
            .thenComparing(Fact::recordedAtDevice)
            .thenComparing(Fact::happenedAt)
            .thenComparing(Fact::toString);

    private final List<Fact> counting;

    private Logbook(List<Fact> counting) {
        this.counting = counting;
    }

    /**
     * @param facts in any order, repeated or not
     * @throws IllegalArgumentException if they are of more than one course
     */
    public static Logbook of(Collection<Fact> facts) {
        // In the order given: facts that come sorted, as from a store, are then soon sorted again.
        Map<UUID, Fact> recorded = new LinkedHashMap<>(2 * facts.size());
        String course = facts.isEmpty() ? "" : facts.iterator().next().course();
        for (Fact fact : facts) {
            if (!fact.course().equals(course)) {
                throw new IllegalArgumentException(
                        "a logbook is of one course; these facts are of " + course + " and " + fact.course());
            }
            recorded.merge(fact.id(), fact, BinaryOperator.minBy(FIRST_COUNTS));
        }
        return new Logbook(counting(recorded));
    }

    private static List<Fact> counting(Map<UUID, Fact> recorded) {
        Corrections corrections = new Corrections(recorded.values());
        List<Fact> counting = new ArrayList<>(recorded.size());
        for (Fact fact : recorded.values()) {
            if (!(fact.payload() instanceof Correction)) {
                corrections.resolve(fact).ifPresent(counting::add);
            }
        }
        counting.sort(Fact.ORDER);
        return Collections.unmodifiableList(counting);
    }

    /** The facts that count, in order. */
    public List<Fact> facts() {
        return counting;
    }
}
