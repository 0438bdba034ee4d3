package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** The polygons of an area feature, checked and taken to the course's frame. */
public final class Polygons {
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
            parts.add(toCourse.apply(part));
        }
        return parts;
    }

    private static Polygon polygon(Geometry shape, MapFeature feature) {
        if (shape instanceof Polygon polygon && !polygon.isEmpty()) {
            return polygon;
        }
        if (shape instanceof LineString line) {
            Coordinate[] points = line.getCoordinates();
            return line.getFactory().createPolygon(Rings.close(List.of(points), line.getFactory(), feature.where()));
        }
        Message.Argument found = new Message.Name(shape.getGeometryType());
        throw Finding.of(FindingKind.WRONG_SHAPE, feature.where(), found).failure();
    }

    private static void check(Polygon polygon, MapFeature feature, Projection toCourse) {
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            Coordinate at = error.getCoordinate();
            Message.Argument point = new Message.Name(at.x + ", " + at.y);
            throw Finding.of(FindingKind.OUTLINE_CROSSES_ITSELF, feature.where(), point)
                    .at(toCourse.toCourse(at.x, at.y))
                    .failure();
        }
    }
}
