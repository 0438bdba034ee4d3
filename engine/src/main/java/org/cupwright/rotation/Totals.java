package org.cupwright.rotation;

import org.cupwright.rotation.counting.Parts;
import org.cupwright.rotation.counting.Split;

/**
 * How the day's holes are spread.
 *
 * @param holes holes planned
 * @param thirds front, middle, back, of the holes with a line of play
 * @param laterals left, centre, right, of the same holes
 * @param difficulties easier, medium, harder, of the holes whose difficulty is known
 */
public record Totals(int holes, Parts thirds, Parts laterals, Parts difficulties) {
    static Totals of(int holes, long tally) {
        return new Totals(holes, Split.THIRD.parts(tally), Split.LATERAL.parts(tally), Split.DIFFICULTY.parts(tally));
    }
}
