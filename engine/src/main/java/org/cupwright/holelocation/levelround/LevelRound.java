package org.cupwright.holelocation.levelround;

import java.util.List;

/**
 * A round with the level over one green.
 *
 * @param spots where to read, in the order of a walk from the front
 * @param undecidedSquareMetres ground on which the rule of level ground has no answer yet within two standard errors,
 *     each spot taken by itself
 * @param expectedSquareMetres of it, what the readings are expected to decide
 */
public record LevelRound(List<RoundSpot> spots, double undecidedSquareMetres, double expectedSquareMetres) {
    public LevelRound {
        spots = List.copyOf(spots);
    }

    /** Share of the undecided ground that the round is expected to decide, 0 to 1; 0 when nothing is undecided. */
    public double expectedShare() {
        return undecidedSquareMetres > 0 ? expectedSquareMetres / undecidedSquareMetres : 0;
    }
}
