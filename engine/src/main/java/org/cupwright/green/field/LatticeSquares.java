package org.cupwright.green.field;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The ground that spots of a lattice stand for: the squares about them. */
public final class LatticeSquares {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private LatticeSquares() {}

    /**
     * The squares about the spots as one area, cut at the green's edge; what a cut leaves of lines and points is
     * dropped.
     */
    public static MultiPolygon joined(List<MapPoint> spots, double sideMetres, Outline green) {
        List<Geometry> squares =
                spots.stream().map(spot -> square(spot, sideMetres / 2)).toList();
        Geometry whole = OverlayNGRobust.union(squares, FACTORY);
        Geometry inside = OverlayNGRobust.overlay(whole, green.polygon(), OverlayNG.INTERSECTION);
        List<?> areas = PolygonExtracter.getPolygons(inside);
        return FACTORY.createMultiPolygon(areas.toArray(Polygon[]::new));
    }

    private static Geometry square(MapPoint spot, double half) {
        return FACTORY.toGeometry(
                new Envelope(spot.east() - half, spot.east() + half, spot.north() - half, spot.north() + half));
    }
}
