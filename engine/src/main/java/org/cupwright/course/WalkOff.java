package org.cupwright.course;

import java.util.List;

/**
 * A track on which players leave a green, towards the next tee: traffic that wears the turf besides the hole itself.
 *
 * @param points two at least, from the green outwards, in the course's frame
 */
public record WalkOff(List<MapPoint> points) {
    public WalkOff {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a walk-off track of " + points.size() + " points; it needs two");
        }
    }
}
