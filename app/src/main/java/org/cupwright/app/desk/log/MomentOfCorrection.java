package org.cupwright.app.desk.log;

import java.time.Instant;
import java.util.List;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;

/** When a correction is said to have been recorded, so that it counts. */
public final class MomentOfCorrection {
    private MomentOfCorrection() {}

    /** Now; after every other correction of the fact, also when the clock was put back since. */
    public static Instant on(Fact fact, List<Fact> all, Instant now) {
        return all.stream()
                .filter(other -> other.payload() instanceof Correction correction
                        && correction.of().equals(fact.id()))
                .map(other -> other.recordedAtDevice().plusMillis(1))
                .filter(now::isBefore)
                .max(Instant::compareTo)
                .orElse(now);
    }
}
