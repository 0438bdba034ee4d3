package org.cupwright.course;

import java.util.List;
import org.cupwright.units.Heading;

/**
 * The line along which a hole is played, from the tee towards the hole.
 *
 * @param points two points at least, in the course's frame, the last one on or near the green
 */
public record LineOfPlay(List<MapPoint> points) {
    public LineOfPlay {
        points = List.copyOf(points);
        if (points.size() < 2 || points.get(points.size() - 1).equals(points.get(points.size() - 2))) {
            throw new IllegalArgumentException("a line of play needs two different points at its end");
        }
    }

    /**
     * A line of play of which only the direction at the green is known: a metre of it, ending at the green's centroid.
     */
    public static LineOfPlay towards(Outline green, Heading heading) {
        MapPoint end = green.centroid();
        return new LineOfPlay(List.of(end.moved(heading, -1), end));
    }

    /** The direction of play at the green: that of the last leg. */
    public Heading atGreen() {
        MapPoint before = points.get(points.size() - 2);
        MapPoint end = points.get(points.size() - 1);
        return Heading.ofStep(end.east() - before.east(), end.north() - before.north());
    }
}
