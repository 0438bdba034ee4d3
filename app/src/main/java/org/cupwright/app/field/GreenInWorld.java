package org.cupwright.app.field;

import java.util.List;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.green.GreenFrame;
import org.locationtech.jts.geom.Coordinate;

/**
 * From degrees, as a phone gives them, to a green's own frame: a place in degrees that is the middle of the green, and
 * how many metres to the right and on a degree of longitude and one of latitude make there. Straight within a
 * millimetre for sixty metres about, which a phone is a thousand times from telling.
 *
 * @param longitude of the green's middle, degrees east, WGS84
 * @param latitude of it, degrees north
 * @param rightOfLongitude metres to the right a degree of longitude
 * @param rightOfLatitude metres to the right a degree of latitude
 * @param onOfLongitude metres on a degree of longitude
 * @param onOfLatitude metres on a degree of latitude
 */
record GreenInWorld(
        double longitude,
        double latitude,
        double rightOfLongitude,
        double rightOfLatitude,
        double onOfLongitude,
        double onOfLatitude) {
    /** Steps to both sides, degrees: about the size of a green. */
    private static final double STEP = 5e-4;

    static GreenInWorld of(GreenFrame green, CourseFrame course) {
        CoordinateFrame degrees = CoordinateFrame.of(CoordinateFrame.WGS84);
        CoordinateFrame metres = CoordinateFrame.of(course.epsg());
        MapPoint middle = green.at(0, 0);
        Coordinate at = Projection.between(metres, degrees).apply(middle.east(), middle.north());
        Projection back = Projection.between(degrees, metres);
        MapPoint east = back.toCourse(at.x + STEP, at.y);
        MapPoint west = back.toCourse(at.x - STEP, at.y);
        MapPoint north = back.toCourse(at.x, at.y + STEP);
        MapPoint south = back.toCourse(at.x, at.y - STEP);
        return new GreenInWorld(
                at.x,
                at.y,
                (green.rightMetres(east) - green.rightMetres(west)) / (2 * STEP),
                (green.rightMetres(north) - green.rightMetres(south)) / (2 * STEP),
                (green.forwardMetres(east) - green.forwardMetres(west)) / (2 * STEP),
                (green.forwardMetres(north) - green.forwardMetres(south)) / (2 * STEP));
    }

    List<Double> numbers() {
        return List.of(longitude, latitude, rightOfLongitude, rightOfLatitude, onOfLongitude, onOfLatitude);
    }
}
