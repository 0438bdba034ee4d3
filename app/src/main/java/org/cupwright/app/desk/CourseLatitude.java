package org.cupwright.app.desk;

import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;

/** How far north or south a course lies, as its map says. */
public final class CourseLatitude {
    private static final int WGS84 = 4326;

    private CourseLatitude() {}

    /** Latitude of the course's first green, degrees, south negative: its weather is taken to be measured near it. */
    public static double degrees(Course course) {
        MapPoint middle = course.holes().get(0).green().centroid();
        Projection toDegrees =
                Projection.between(CoordinateFrame.of(course.frame().epsg()), CoordinateFrame.of(WGS84));
        return toDegrees.apply(middle.east(), middle.north()).getY();
    }
}
