package org.cupwright.app.desk.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.cupchange.Fact;

/**
 * What a logbook comes to when its facts are taken in one after the other: folding a later stretch onto the state of an
 * earlier one must give the state of both.
 */
public interface FoldedFacts<S> {
    /**
     * Under which name states of this kind are kept; another one when what is kept of it, or what goes into it,
     * changes.
     */
    String name();

    /** The state of an empty logbook. */
    S nothing();

    /** The facts that tell, from one moment on and before another. */
    List<Fact> between(FactsInEffect facts, Instant from, Instant before);

    /** The state with what happened next. */
    S with(S before, List<Fact> next);

    byte[] write(S state);

    /** Empty when the bytes are damaged. */
    Optional<S> read(byte[] bytes);
}
