package org.cupwright.rotation.candidate;

import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Geometry;

/**
 * An area of a green that the course has a number or a letter for.
 *
 * @param number by which the course calls it; one of a kind on its green
 * @param place a polygon in the course's frame
 */
public record Area(String number, Geometry place) {
    /** Whether a point lies in it, its rim included. */
    public boolean holds(MapPoint point) {
        return place.covers(point.toPoint());
    }
}
