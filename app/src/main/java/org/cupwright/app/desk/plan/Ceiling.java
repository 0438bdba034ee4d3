package org.cupwright.app.desk.plan;

import java.time.Duration;
import java.util.Optional;
import org.cupwright.rotation.weeks.SearchWatch;

/** Stops a search when the time allowed for it is over. */
final class Ceiling {
    private final long began = System.nanoTime();
    private final Optional<Duration> allowed;
    private volatile boolean reached;

    private Ceiling(Optional<Duration> allowed) {
        this.allowed = allowed;
    }

    /** Counts from now; none allowed is all the time there is. */
    static Ceiling from(Optional<Duration> allowed) {
        return new Ceiling(allowed);
    }

    /** Asked before another is: whoever stops first is the one who did. */
    SearchWatch before(SearchWatch other) {
        return (done, all) -> {
            boolean over = allowed.isPresent()
                    && System.nanoTime() - began >= allowed.get().toNanos();
            // Work that is done was not stopped.
            reached |= over && done < all;
            return !over && other.goOn(done, all);
        };
    }

    boolean reached() {
        return reached;
    }
}
