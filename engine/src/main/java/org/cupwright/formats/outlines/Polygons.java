package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Closed rings from lists of points, and the polygons of an area feature, checked and taken to the course's frame. */
public final class Polygons {
    /** The first point is repeated at the end, so a triangle has four (RFC 7946, section 3.1.6). */
    private static final int FEWEST_POINTS = 4;

    private Polygons() {}

    /**
     * @return one polygon or, of a MultiPolygon, each part; a closed line counts as the polygon it goes round
     * @throws org.cupwright.finding.UnreadableFile if the feature is no area or its edge crosses itself
     */
    public static List<Polygon> of(MapFeature feature, Projection toCourse) {
        List<Polygon> parts = new ArrayList<>();
        Geometry shape = feature.shape();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            Polygon part = polygon(shape.getGeometryN(i), feature);
            check(part, feature, toCourse);
            Polygon placed = toCourse.apply(part);
            checkPlaced(placed, part, feature);
            parts.add(placed);
        }
        return parts;
    }

    private static Polygon polygon(Geometry shape, MapFeature feature) {
        if (shape instanceof Polygon polygon && !polygon.isEmpty()) {
            return polygon;
        }
        if (shape instanceof LineString line) {
            Coordinate[] points = line.getCoordinates();
            return line.getFactory().createPolygon(ring(List.of(points), line.getFactory(), feature.where()));
        }
        throw Finding.of(FindingKind.WRONG_SHAPE, feature.where(), shape.getGeometryType())
                .failure();
    }

    private static void check(Polygon polygon, MapFeature feature, Projection toCourse) {
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            Coordinate at = error.getCoordinate();
            throw Finding.of(FindingKind.OUTLINE_CROSSES_ITSELF, feature.where(), at.x + ", " + at.y)
                    .at(toCourse.toCourse(at.x, at.y))
                    .failure();
        }
    }

    /** What is sound in degrees need not be in metres: points of a sliver can fall together. */
    private static void checkPlaced(Polygon placed, Polygon drawn, MapFeature feature) {
        if (placed.isEmpty() || !placed.isValid()) {
            Coordinate at = drawn.getCoordinate();
            throw Finding.of(FindingKind.OUTLINE_CROSSES_ITSELF, feature.where(), at.x + ", " + at.y)
                    .failure();
        }
    }

    /**
     * @throws org.cupwright.finding.UnreadableFile if there are fewer than four points or the last is not the first
     */
    static LinearRing ring(List<Coordinate> points, GeometryFactory factory, Message where) {
        if (points.size() < FEWEST_POINTS) {
            throw Finding.of(FindingKind.RING_TOO_SHORT, where, points.size()).failure();
        }
        Coordinate first = points.get(0);
        Coordinate last = points.get(points.size() - 1);
        if (!first.equals2D(last)) {
            throw Finding.of(
                            FindingKind.RING_OPEN,
                            where,
                            "(" + first.x + ", " + first.y + ") ≠ (" + last.x + ", " + last.y + ")")
                    .failure();
        }
        return factory.createLinearRing(points.toArray(Coordinate[]::new));
    }
}
