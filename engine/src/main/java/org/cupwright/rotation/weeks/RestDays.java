package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * How long the ground about an old hole rests and its plug shows, by the day on which the hole was left.
 *
 * @param rest the last day on which the ground rests
 * @param plug the last day on which the plug is taken to show
 */
public record RestDays(UnaryOperator<LocalDate> rest, UnaryOperator<LocalDate> plug) {
    /** The same, each day asked about once: an answer takes a walk through weather, and many ask for it. */
    RestDays remembered() {
        Map<LocalDate, LocalDate> rests = new ConcurrentHashMap<>();
        Map<LocalDate, LocalDate> plugs = new ConcurrentHashMap<>();
        return new RestDays(left -> rests.computeIfAbsent(left, rest), left -> plugs.computeIfAbsent(left, plug));
    }

    LocalDate restsUntil(LocalDate leftOn) {
        return rest.apply(leftOn);
    }

    LocalDate plugShowsUntil(LocalDate leftOn) {
        return plug.apply(leftOn);
    }
}
