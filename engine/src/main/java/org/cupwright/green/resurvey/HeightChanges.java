package org.cupwright.green.resurvey;

import java.util.List;
import java.util.Optional;

/**
 * How far the ground of a green has come up or down between two surveys.
 *
 * @param middle the change of middle size, of all compared ground; empty when nothing could be compared
 * @param greatestRise where it has come up most; empty when it has come up nowhere
 * @param greatestFall where it has come down most, a negative change; empty when it has come down nowhere
 */
public record HeightChanges(
        Optional<HeightChange> middle, Optional<HeightChange> greatestRise, Optional<HeightChange> greatestFall) {
    /** From changes in the order of their size, from the lowest to the highest. */
    static HeightChanges of(List<HeightChange> sorted) {
        if (sorted.isEmpty()) {
            return new HeightChanges(Optional.empty(), Optional.empty(), Optional.empty());
        }
        HeightChange lowest = sorted.get(0);
        HeightChange highest = sorted.get(sorted.size() - 1);
        return new HeightChanges(
                Optional.of(sorted.get(sorted.size() / 2)),
                Optional.of(highest).filter(change -> change.metres() > 0),
                Optional.of(lowest).filter(change -> change.metres() < 0));
    }
}
