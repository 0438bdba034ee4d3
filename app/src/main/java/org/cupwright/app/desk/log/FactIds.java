package org.cupwright.app.desk.log;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.storage.FactStore;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Entries by as much of their id's beginning as makes them out. */
public final class FactIds {
    private static final int NAMED = 5;

    private FactIds() {}

    /**
     * An entry with all that was ever said of it, and what happened at the same moment.
     *
     * @param given what it was named by
     */
    public record Found(String given, UUID id, List<Fact> all) {
        /**
         * The entry as it counts.
         *
         * @throws Problem when it is withdrawn
         */
        public Fact counting() {
            return find(all).orElseThrow(() -> Problem.of("log.withdrawn", "entry", given, new Name(given)));
        }

        /** The entry as it counts with one more correction; empty when that withdraws it. */
        public Optional<Fact> with(Fact correction) {
            return find(Stream.concat(all.stream(), Stream.of(correction)).toList());
        }

        private Optional<Fact> find(List<Fact> recorded) {
            return Logbook.of(recorded).facts().stream()
                    .filter(fact -> fact.id().equals(id))
                    .findFirst();
        }
    }

    public static Found of(FactStore store, String courseId, String given) {
        UUID id = id(store, courseId, given);
        Instant when = store.find(id).orElseThrow().happenedAt();
        return new Found(given, id, store.between(courseId, when, when.plusNanos(1)));
    }

    private static UUID id(FactStore store, String courseId, String given) {
        String start = given.toLowerCase(Locale.ROOT);
        List<UUID> found = start.isBlank() ? List.of() : store.ids(courseId, start);
        if (found.isEmpty()) {
            throw Problem.of("log.unknownId", "entry", given, new Name(given));
        }
        if (found.size() > 1) {
            throw LogProblems.severalIds(
                    given, found.stream().limit(NAMED).map(UUID::toString).toList());
        }
        return found.get(0);
    }
}
