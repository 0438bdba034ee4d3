package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * A hole that a green had before the first day of the plan.
 *
 * @param at where
 * @param cutOn the day it was cut
 * @param leftOn the day it was left; empty while it is in use, then it is left on the first day of the plan
 */
public record PastHole(MapPoint at, LocalDate cutOn, Optional<LocalDate> leftOn) {
    /**
     * The last day on which it was played to.
     *
     * @param firstDay of the plan
     */
    LocalDate lastDay(LocalDate firstDay) {
        LocalDate before = leftOn.orElse(firstDay).minusDays(1);
        return before.isBefore(cutOn) ? cutOn : before;
    }
}
