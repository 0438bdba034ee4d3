package org.cupwright.testing;

import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Outlines for tests. */
public final class Shapes {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}

    /** A circle as a polygon of 360 sides, its corners on the circle. */
    public static Outline circle(double east, double north, double radiusMetres) {
        Coordinate[] ring = new Coordinate[361];
        for (int i = 0; i < 360; i++) {
            double turn = Math.toRadians(i);
            ring[i] = new Coordinate(
                    east + radiusMetres * StrictMath.sin(turn), north + radiusMetres * StrictMath.cos(turn));
        }
        ring[360] = ring[0].copy();
        return new Outline(FACTORY.createPolygon(ring));
    }

    public static Outline rectangle(double west, double south, double east, double north) {
        return polygon(west, south, east, south, east, north, west, north);
    }

    /** A polygon from its corners, east and north in turn, not closed. */
    public static Outline polygon(double... eastNorth) {
        return new Outline(area(eastNorth));
    }

    public static Polygon area(double... eastNorth) {
        Coordinate[] ring = new Coordinate[eastNorth.length / 2 + 1];
        for (int i = 0; i < eastNorth.length / 2; i++) {
            ring[i] = new Coordinate(eastNorth[2 * i], eastNorth[2 * i + 1]);
        }
        ring[ring.length - 1] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }
}
