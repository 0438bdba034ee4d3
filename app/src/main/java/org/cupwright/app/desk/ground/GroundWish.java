package org.cupwright.app.desk.ground;

import org.cupwright.course.Hazard.Kind;

/** What somebody draws about a green, or takes away. Corners are a line each, as {@link PaceGrid} writes them. */
public sealed interface GroundWish {
    /** A hazard that is not there yet. */
    record Another(Kind kind, String corners) implements GroundWish {}

    /**
     * Other corners of a hazard that is there.
     *
     * @param number its place in the hole's list, the first is 1
     */
    record Moved(int number, String corners) implements GroundWish {}

    /** A hazard that is no longer there. */
    record Away(int number) implements GroundWish {}

    /** Another edge of the green. */
    record Edge(String corners) implements GroundWish {}
}
