package org.cupwright.rotation;

import org.cupwright.course.MapPoint;

/**
 * Two holes played to one green, each to a position of its own.
 *
 * @param first one of them
 * @param second the other
 */
public record SharedGreen(String first, String second) {
    public SharedGreen {
        if (first.equals(second)) {
            throw new IllegalArgumentException("hole " + first + " cannot share its green with itself");
        }
    }

    /** How far apart the two are in a plan; infinite when one of them has no hole in it. */
    double metresApart(DayPlan plan) {
        return plan.find(first)
                .flatMap(one -> plan.find(second).map(other -> at(one).distanceMetres(at(other))))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static MapPoint at(PlannedHole hole) {
        return hole.candidate().at();
    }
}
