package org.cupwright.cupchange;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * Resolves corrections.
 *
 * <ul>
 * <li>Of several corrections of one fact the one recorded last counts, by the device's clock, then by id. The server's
 * clock is not asked: it is not known until a fact is received, and receiving a fact must not change what counts.
 *   <li>A correction that is withdrawn is as if it had never been: the next one counts, or the fact as it was.
 *   <li>A correction that is itself corrected stands in its own place with the replacement.
 *   <li>A correction that makes a fact of the whole course into one that needs a hole, and names none, changes nothing.
 *   <li>A correction whose fact has not come yet waits. Corrections that point at each other in a circle wait for ever.
 * </ul>
 */
final class Corrections {
    private static final Comparator<Fact> LAST_RECORDED_FIRST =
            Comparator.comparing(Fact::recordedAtDevice).thenComparing(Fact::id).reversed();

    private final Map<UUID, List<Fact>> byTarget = new HashMap<>();

    Corrections(Collection<Fact> facts) {
        for (Fact fact : facts) {
            if (fact.payload() instanceof Correction correction) {
                byTarget.computeIfAbsent(correction.of(), none -> new ArrayList<>())
                        .add(fact);
            }
        }
        byTarget.values().forEach(list -> list.sort(LAST_RECORDED_FIRST));
    }

    /** What a fact says with its corrections; empty when it is withdrawn. */
    Optional<Fact> resolve(Fact fact) {
        List<Fact> corrections = byTarget.get(fact.id());
        if (corrections == null) {
            return Optional.of(fact);
        }
        for (Fact correction : corrections) {
            Optional<Fact> standing = resolve(correction);
            if (standing.isPresent() && fits(fact, standing.get())) {
                return apply(fact, standing.get());
            }
        }
        return Optional.of(fact);
    }

    /** Whether the corrected fact would name the hole that its new payload needs. */
    static boolean fits(Fact fact, Fact correction) {
        boolean needsHole = ((Correction) correction.payload())
                .replacement()
                .map(Payload::needsHole)
                .orElse(false);
        boolean ofCorrection = fact.payload() instanceof Correction;
        return !needsHole
                || ofCorrection
                || fact.hole().isPresent()
                || correction.hole().isPresent();
    }

    private static Optional<Fact> apply(Fact fact, Fact correction) {
        Correction says = (Correction) correction.payload();
        if (fact.payload() instanceof Correction corrected) {
            return says.replacement()
                    .map(better -> fact.corrected(
                            correction.hole(),
                            correction.version(),
                            new Correction(corrected.of(), Optional.of(better))));
        }
        return says.replacement().map(better -> fact.corrected(correction.hole(), correction.version(), better));
    }
}
