package org.cupwright.turf.state;

import java.time.LocalDate;
import org.cupwright.course.MapPoint;

/**
 * Where a hole was.
 *
 * @param cutOn the day it was cut
 * @param leftOn the day the hole went elsewhere: its rest begins
 */
public record OldHole(MapPoint at, LocalDate cutOn, LocalDate leftOn) {
    /** The last day on which it was played to: the one before it was left, or the same where it was moved that day. */
    public LocalDate lastDay() {
        LocalDate before = leftOn.minusDays(1);
        return before.isBefore(cutOn) ? cutOn : before;
    }
}
