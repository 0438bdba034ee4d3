package org.cupwright.rotation.candidate;

import java.util.Optional;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.holelocation.Judgement;

/**
 * One spot of a green as it was judged for the day.
 *
 * @param judgement what the rules say, and where
 * @param place where that is on the green; empty without a line of play
 */
public record JudgedSpot(Judgement judgement, Optional<PlaceOnGreen> place) {}
