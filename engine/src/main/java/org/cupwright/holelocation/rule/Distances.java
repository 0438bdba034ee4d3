package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.Outcome;

/** What the distance rules share. */
final class Distances {
    private Distances() {}

    /** Fails nearer than a limit, is a caution nearer than another, and passes beyond. */
    static Outcome outcome(double metres, double failMetres, double cautionMetres) {
        if (metres < failMetres) {
            return Outcome.FAIL;
        }
        return metres < cautionMetres ? Outcome.CAUTION : Outcome.PASS;
    }

    /** Distance to the nearest of some points, m; infinite where there are none. */
    static double nearest(MapPoint from, List<MapPoint> points) {
        double nearest = Double.POSITIVE_INFINITY;
        for (MapPoint point : points) {
            nearest = Math.min(nearest, from.distanceMetres(point));
        }
        return nearest;
    }
}
