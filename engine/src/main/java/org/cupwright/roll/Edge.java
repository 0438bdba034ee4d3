package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;

/** Where a rolling ball is still on the green. */
@FunctionalInterface
public interface Edge {
    /** A green without an end. */
    Edge NONE = (east, north) -> true;

    boolean inside(double east, double north);

    /** The edge of a green as it is drawn. */
    static Edge of(Outline outline) {
        return (east, north) -> outline.contains(new MapPoint(east, north));
    }
}
