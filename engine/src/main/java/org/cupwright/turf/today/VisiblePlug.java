package org.cupwright.turf.today;

import java.time.LocalDate;
import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.state.Plug;

/**
 * A plug whose outline is visible, or may be.
 *
 * @param guess when the model guesses it to have knit; only a guess
 * @param countsUntil the last day on which it keeps holes away: the guess, or later when somebody has seen it unknit
 * @param askUntil the last day on which somebody is asked to look
 */
public record VisiblePlug(String hole, Plug plug, ClockEnd guess, LocalDate countsUntil, LocalDate askUntil) {
    /** Whether the guess has run out by a day and somebody should look before trusting it. */
    public boolean lookFirstOn(LocalDate day) {
        return day.isAfter(countsUntil) && !day.isAfter(askUntil);
    }
}
