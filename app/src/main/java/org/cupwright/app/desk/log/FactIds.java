package org.cupwright.app.desk.log;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;

/** Entries by as much of their id's beginning as makes them out. */
final class FactIds {
    private static final int NAMED = 5;

    private FactIds() {}

    static UUID of(List<Fact> facts, String given) {
        String start = given.toLowerCase(Locale.ROOT);
        List<UUID> found = facts.stream()
                .filter(fact -> !(fact.payload() instanceof Correction))
                .map(Fact::id)
                .filter(id -> !start.isBlank() && id.toString().startsWith(start))
                .toList();
        if (found.isEmpty()) {
            throw LogProblems.unknownId(given);
        }
        if (found.size() > 1) {
            throw LogProblems.severalIds(
                    given, found.stream().limit(NAMED).map(UUID::toString).toList());
        }
        return found.get(0);
    }
}
