package org.cupwright.app.desk.log;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.cupchange.Fact;

/** Everything that was ever recorded. Nothing is changed or taken away: what was wrong is corrected by a further fact. */
public interface FactStore {
    /** What became of a fact that was handed in. */
    enum Kept {
        /** It is new and now kept. */
        NEW,
        /** It had arrived before; nothing was added. */
        KNOWN,
        /** Its id had arrived before with other contents, which stay; this one was not kept. */
        DIFFERENT
    }

    Kept add(Fact fact);

    Optional<Fact> find(UUID id);

    /** All facts of a course as they were recorded, corrections among them, in the order in which they happened. */
    List<Fact> all(String courseId);

    /** Those that happened from one moment on and before another. */
    List<Fact> between(String courseId, Instant from, Instant before);
}
