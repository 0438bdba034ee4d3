package org.cupwright.rotation.weeks;

import org.cupwright.green.GroundOnDay;
import org.cupwright.rotation.candidate.Wishes;

/**
 * What is known beforehand of one green on one day.
 *
 * @param ground what lies on it that day, old holes apart: plugs that show, closed and saved ground
 * @param wishes what was decided for it
 * @param changes whether its hole is changed that day; if not, it stays where it was as long as nothing forbids that.
 *     On the first day the hole that stays is the one locked, which is where it is already
 */
public record GreenDay(GroundOnDay ground, Wishes wishes, boolean changes) {
    /** A day on which the hole is changed. */
    public GreenDay(GroundOnDay ground, Wishes wishes) {
        this(ground, wishes, true);
    }
}
