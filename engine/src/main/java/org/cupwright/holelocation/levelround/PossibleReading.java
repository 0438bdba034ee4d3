package org.cupwright.holelocation.levelround;

import java.util.HashMap;
import java.util.Map;
import org.cupwright.green.surveyed.ReadingEffects;

/**
 * A spot where the level could be laid, with its ties to the spots about it as the readings chosen so far leave them.
 */
final class PossibleReading {
    /** Beyond it a reading tells next to nothing (our choice: under a hundredth of the variance). */
    static final double REACH_METRES = 3;

    final int spot;
    final int[] near;
    private final Map<Integer, Tie> ties = new HashMap<>();

    PossibleReading(int spot, OpenGround ground, ReadingEffects effects) {
        this.spot = spot;
        this.near = ground.within(ground.spot(spot).at(), REACH_METRES);
        ReadingEffects.At reading = effects.at(ground.spot(spot).at());
        for (int other : near) {
            ties.put(other, Tie.of(reading.with(ground.spot(other).at())));
        }
    }

    Tie tie(int other) {
        return ties.get(other);
    }

    boolean reaches(int other) {
        return ties.containsKey(other);
    }

    /** Takes into account that a reading at another spot is taken. */
    void after(PossibleReading taken, GradientSpread inverse) {
        if (!taken.reaches(spot)) {
            return;
        }
        Tie toTaken = taken.tie(spot);
        for (int other : near) {
            if (taken.reaches(other)) {
                ties.computeIfPresent(other, (number, tie) -> tie.after(taken.tie(number), inverse, toTaken));
            }
        }
    }
}
