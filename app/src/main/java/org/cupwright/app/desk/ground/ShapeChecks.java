package org.cupwright.app.desk.ground;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.findings.GreenSize;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Problem;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Refuses what can be no edge of a green, bunker or water, as the readers of maps do. */
public final class ShapeChecks {
    /** What lies farther from a green's edge is not kept with it, m: as far as maps are read. */
    public static final double REACH_METRES = 20;

    /** Smaller than this is a slip of the hand, m²: our choices. */
    private static final double SMALLEST_HAZARD = 1;

    private static final double SMALLEST_GREEN = 15;

    /** No bunker beside a green is larger, m²: our choice. */
    private static final double LARGEST_BUNKER = 5_000;

    /** A hazard that covers more of the green than this was drawn round it: our choice. */
    private static final double MOST_OF_GREEN = 0.2;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private ShapeChecks() {}

    /** The ground within some corners. */
    public static Polygon ground(List<MapPoint> corners) {
        return checked(FACTORY.createPolygon(ring(corners)));
    }

    private static LinearRing ring(List<MapPoint> corners) {
        List<Coordinate> ring =
                new ArrayList<>(corners.stream().map(MapPoint::toCoordinate).toList());
        ring.add(ring.get(0).copy());
        return FACTORY.createLinearRing(ring.toArray(Coordinate[]::new));
    }

    private static Polygon checked(Polygon shape) {
        if (shape.isEmpty() || !shape.isValid()) {
            throw Problem.of("ground.crosses", TypedRing.FIELD, "");
        }
        return shape;
    }

    /** The same of a green that has ground within which is none of it: that stays so. */
    static Polygon edge(List<MapPoint> corners, Outline before) {
        Polygon old = before.polygon();
        LinearRing[] within = new LinearRing[old.getNumInteriorRing()];
        for (int i = 0; i < within.length; i++) {
            within[i] = (LinearRing) old.getInteriorRingN(i).copy();
        }
        return checked(FACTORY.createPolygon(ring(corners), within));
    }

    /** @throws Problem if the hazard is too small or too large, or lies on most of the green, or nowhere near it */
    public static Hazard hazard(Hazard.Kind kind, Polygon shape, Outline green) {
        double area = shape.getArea();
        if (area < SMALLEST_HAZARD) {
            throw Problem.of("ground.small", TypedRing.FIELD, "", new Area(area), new Area(SMALLEST_HAZARD));
        }
        if (kind == Hazard.Kind.BUNKER && area > LARGEST_BUNKER) {
            throw Problem.of("ground.large", TypedRing.FIELD, "", new Area(area), new Area(LARGEST_BUNKER));
        }
        Geometry common = OverlayNGRobust.overlay(shape, green.polygon(), OverlayNG.INTERSECTION);
        if (common.getArea() > MOST_OF_GREEN * green.areaSquareMetres()) {
            throw Problem.of(
                    "ground.swallows",
                    TypedRing.FIELD,
                    "",
                    new Area(common.getArea()),
                    new Area(green.areaSquareMetres()));
        }
        double away = shape.distance(green.polygon());
        if (away > REACH_METRES) {
            throw Problem.of("ground.away", TypedRing.FIELD, "", new Length(away), new Length(REACH_METRES));
        }
        return new Hazard(kind, shape);
    }

    /** @throws Problem if no green is of that size, or it is another green's place */
    static Outline green(Polygon shape, Outline before) {
        double area = shape.getArea();
        Envelope extent = shape.getEnvelopeInternal();
        double longest = Math.max(extent.getWidth(), extent.getHeight());
        if (area < SMALLEST_GREEN) {
            throw Problem.of("ground.small", TypedRing.FIELD, "", new Area(area), new Area(SMALLEST_GREEN));
        }
        if (area > GreenSize.IMPOSSIBLE_SQUARE_METRES || longest > GreenSize.IMPOSSIBLE_METRES) {
            throw Problem.of(
                    "ground.large", TypedRing.FIELD, "", new Area(area), new Area(GreenSize.IMPOSSIBLE_SQUARE_METRES));
        }
        Outline outline = new Outline(shape);
        if (!outline.isSameGreenAs(before)) {
            throw Problem.of("ground.elsewhere", TypedRing.FIELD, "");
        }
        return outline;
    }
}
