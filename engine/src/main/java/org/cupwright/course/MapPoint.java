package org.cupwright.course;

import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * A point in the course's frame.
 *
 * @param east metres east of the frame's origin
 * @param north metres north of the frame's origin
 */
public record MapPoint(double east, double north) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    public MapPoint {
        if (!Double.isFinite(east) || !Double.isFinite(north)) {
            throw new IllegalArgumentException("not a point: " + east + ", " + north);
        }
    }

    public static MapPoint of(Coordinate coordinate) {
        return new MapPoint(coordinate.x, coordinate.y);
    }

    public Coordinate toCoordinate() {
        return new Coordinate(east, north);
    }

    /** This point as a geometry. */
    public Point toPoint() {
        return FACTORY.createPoint(toCoordinate());
    }

    public double distanceMetres(MapPoint other) {
        double east = this.east - other.east;
        double north = this.north - other.north;
        return Math.sqrt(east * east + north * north);
    }

    /** The point so many metres away in a direction. */
    public MapPoint moved(Heading heading, double metres) {
        return new MapPoint(east + metres * heading.east(), north + metres * heading.north());
    }
}
