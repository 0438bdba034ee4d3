package org.cupwright.app.desk.log;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.cupwright.app.storage.FactStore;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Entries by as much of their id's beginning as makes them out. */
public final class FactIds {
    private static final int NAMED = 5;

    private FactIds() {}

    public static UUID of(FactStore store, String courseId, String given) {
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
