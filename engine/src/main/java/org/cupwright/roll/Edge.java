package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;

/**
 * Where a green ends, asked at every step of a roll.
 *
 * <p>Implementations are quick and safe for use by several threads.
 */
@FunctionalInterface
public interface Edge {
    /** Ground without end. */
    Edge NONE = (east, north) -> true;

    /** Whether a point lies on the green, its edge included. */
    boolean holds(double east, double north);

    /** The exact outline. */
    static Edge of(Outline outline) {
        return (east, north) -> outline.contains(new MapPoint(east, north));
    }
}
