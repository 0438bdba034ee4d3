package org.cupwright.settingout;

import org.cupwright.course.Mark;

/**
 * A tape pulled from a mark.
 *
 * @param mark where it starts
 * @param metres horizontal distance
 * @param sigmaMetres standard error of the distance
 */
public record Tape(Mark mark, double metres, double sigmaMetres) {
    public Tape {
        if (!(metres > 0) || !(sigmaMetres > 0)) {
            throw new IllegalArgumentException(
                    "a tape from " + mark.name() + " of " + metres + " m, good to " + sigmaMetres + " m, cannot be");
        }
    }
}
