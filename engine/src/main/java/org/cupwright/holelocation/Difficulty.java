package org.cupwright.holelocation;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How hard a position plays.
 *
 * @param expectedPutts expected number of putts; empty until it is computed
 * @param rank easier, medium or harder among the green's good ground; empty where the ground is not known, plays the
 *     same everywhere, or is steeper than the class would tell
 * @param meanLeaveMetres distance left by a ball that crosses the hole at the course's pace, mean over the headings;
 *     empty where the ground is not known
 * @param worstLeaveMetres the same for the worst heading
 */
public record Difficulty(
        OptionalDouble expectedPutts,
        Optional<DifficultyClass> rank,
        OptionalDouble meanLeaveMetres,
        OptionalDouble worstLeaveMetres) {
    public static Difficulty unknown() {
        return new Difficulty(OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The same without a class. */
    public Difficulty unranked() {
        return new Difficulty(expectedPutts, Optional.empty(), meanLeaveMetres, worstLeaveMetres);
    }
}
