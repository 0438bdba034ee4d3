package org.cupwright.app.desk;

import org.cupwright.course.MapPoint;
import org.cupwright.green.Side;

/** How a person names a position. */
public sealed interface Spot {
    /** By its coordinates in the course's frame. */
    record At(MapPoint point) implements Spot {}

    /**
     * By paces on and from a side edge.
     *
     * @param onPaces paces on
     * @param side the side edge, which need not be the nearer one
     * @param sidePaces paces from it
     */
    record Paced(double onPaces, Side side, double sidePaces) implements Spot {}
}
