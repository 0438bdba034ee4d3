package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.function.UnaryOperator;

/**
 * How long the ground about an old hole rests and its plug shows, by the day on which the hole was left.
 *
 * @param rest the last day on which the ground rests
 * @param plug the last day on which the plug is taken to show
 */
public record RestDays(UnaryOperator<LocalDate> rest, UnaryOperator<LocalDate> plug) {
    LocalDate restsUntil(LocalDate leftOn) {
        return rest.apply(leftOn);
    }

    LocalDate plugShowsUntil(LocalDate leftOn) {
        return plug.apply(leftOn);
    }
}
