package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.cupchange.CupWork.CutSomewhere;

/**
 * A hole of which only the part of the green is known.
 *
 * @param part the part
 * @param cutOn the day it was cut
 * @param leftOn the day the hole went elsewhere; empty while it is there
 */
public record RoughHole(CutSomewhere part, LocalDate cutOn, Optional<LocalDate> leftOn) {
    /** Whether the hole was there before a day's change. */
    public boolean before(LocalDate day) {
        return cutOn.isBefore(day) && leftOn.map(left -> !left.isBefore(day)).orElse(true);
    }

    RoughHole left(LocalDate day) {
        return leftOn.isPresent() ? this : new RoughHole(part, cutOn, Optional.of(day));
    }
}
