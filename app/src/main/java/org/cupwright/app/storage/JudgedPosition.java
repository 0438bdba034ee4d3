package org.cupwright.app.storage;

import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.holelocation.Judgement;

/**
 * A position with all that is told of it.
 *
 * @param judgement the verdict and the rules behind it
 * @param place where it lies as seen from the fairway; empty where the line of play is not known
 * @param goodWithinMetres how far off the hole may be cut without a worse verdict; empty where that is not known
 */
public record JudgedPosition(Judgement judgement, Optional<PlaceOnGreen> place, OptionalDouble goodWithinMetres) {}
