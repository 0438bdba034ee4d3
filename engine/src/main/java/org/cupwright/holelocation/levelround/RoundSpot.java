package org.cupwright.holelocation.levelround;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Third;

/**
 * A spot at which the level is to be laid.
 *
 * @param at where, course frame
 * @param place the same in the words of the green; empty without a line of play
 * @param candidateOf the third whose best undecided position this is; empty when it is for the open ground
 * @param expectedSquareMetres ground that this reading is expected to decide beside those chosen before it
 */
public record RoundSpot(
        MapPoint at, Optional<PlaceOnGreen> place, Optional<Third> candidateOf, double expectedSquareMetres) {}
