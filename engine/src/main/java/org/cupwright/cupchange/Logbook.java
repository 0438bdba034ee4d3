package org.cupwright.cupchange;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;

/**
 * The facts of one course that count: repeated ones once, corrected ones as corrected, withdrawn ones gone, in the
 * order in which they happened ({@link Fact#ORDER}).
 *
 * <p>The result depends on the facts alone, never on the order in which they arrived or how often. Two facts that claim
 * one id with different contents are a defect of a device; the one the server received first counts, then the one
 * recorded first, then the first by its text, and {@link #disputed()} names the id.
 */
public final class Logbook {
    private final Map<UUID, Fact> recorded;
    private final List<Fact> counting;
    private final List<Fact> waiting;
    private final Set<UUID> disputed;

    private Logbook(Map<UUID, Fact> recorded, Set<UUID> disputed) {
        this.recorded = recorded;
        this.disputed = disputed;
        this.counting = counting(recorded);
        this.waiting = recorded.values().stream()
                .filter(fact -> fact.payload() instanceof Correction && waits(fact))
                .sorted(Fact.ORDER)
                .toList();
    }

    /**
     * @param facts in any order, repeated or not
     * @throws IllegalArgumentException if they are of more than one course
     */
    public static Logbook of(Collection<Fact> facts) {
        // In the order given: facts that come sorted, as from a store, are then soon sorted again.
        Map<UUID, Fact> recorded = new LinkedHashMap<>(2 * facts.size());
        Set<UUID> disputed = new TreeSet<>();
        String course = facts.isEmpty() ? "" : facts.iterator().next().course();
        for (Fact fact : facts) {
            if (!fact.course().equals(course)) {
                throw new IllegalArgumentException(
                        "a logbook is of one course; these facts are of " + course + " and " + fact.course());
            }
            Fact known = recorded.putIfAbsent(fact.id(), fact);
            if (known != null && !known.equals(fact)) {
                recorded.put(fact.id(), Repeats.first(known, fact));
                if (!Repeats.sameContents(known, fact)) {
                    disputed.add(fact.id());
                }
            }
        }
        return new Logbook(recorded, disputed);
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

    /** Those that happened up to and at a moment. */
    public List<Fact> upTo(Instant moment) {
        return counting.subList(0, firstAfter(moment));
    }

    /** Those that happened after one moment, up to and at another. */
    public List<Fact> between(Instant after, Instant upTo) {
        int from = firstAfter(after);
        return counting.subList(from, Math.max(from, firstAfter(upTo)));
    }

    /**
     * Corrections that change nothing yet, because what they correct has not arrived or they name no hole where one is
     * needed.
     */
    public List<Fact> waiting() {
        return waiting;
    }

    /** Ids that came with different contents. */
    public Set<UUID> disputed() {
        return Set.copyOf(disputed);
    }

    /** The fact that one speaks of in the end: itself, or at the end of a chain of corrections what is corrected. */
    private Optional<Fact> target(Fact fact) {
        Fact at = fact;
        for (int links = 0; at != null && at.payload() instanceof Correction correction; links++) {
            if (links > recorded.size()) {
                return Optional.empty();
            }
            at = recorded.get(correction.of());
        }
        return Optional.ofNullable(at);
    }

    private boolean waits(Fact correction) {
        return target(correction)
                .map(fact -> !Corrections.fits(fact, correction))
                .orElse(true);
    }

    private int firstAfter(Instant moment) {
        int low = 0;
        int high = counting.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (counting.get(middle).happenedAt().isAfter(moment)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
