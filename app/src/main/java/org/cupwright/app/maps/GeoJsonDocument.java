package org.cupwright.app.maps;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A feature collection that is being written (RFC 7946): WGS84, longitude before latitude, outer rings anticlockwise
 * and inner ones clockwise.
 */
final class GeoJsonDocument {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final double HUNDREDTHS = 100;

    /** Decimals of a degree: about a millimetre. */
    private static final int DECIMALS = 8;

    private final Projection toDegrees;
    private final ArrayNode features = NODES.arrayNode();

    /** @param epsg the frame the shapes are in */
    GeoJsonDocument(int epsg) {
        this.toDegrees = Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84));
    }

    /**
     * Adds a feature.
     *
     * @param shape a point, a polygon, or several polygons
     * @return its properties, to be filled
     */
    ObjectNode add(Geometry shape) {
        ObjectNode feature = features.addObject().put("type", "Feature");
        ObjectNode geometry = feature.putObject("geometry");
        if (shape instanceof Point) {
            geometry.put("type", "Point").set("coordinates", position(shape.getCoordinate()));
        } else if (shape instanceof Polygon polygon) {
            geometry.put("type", "Polygon").set("coordinates", rings(polygon));
        } else {
            ArrayNode polygons = geometry.put("type", "MultiPolygon").putArray("coordinates");
            for (int i = 0; i < shape.getNumGeometries(); i++) {
                polygons.add(rings((Polygon) shape.getGeometryN(i)));
            }
        }
        return feature.putObject("properties");
    }

    static Geometry point(MapPoint at) {
        return at.toPoint();
    }

    private ArrayNode rings(Polygon polygon) {
        ArrayNode rings = NODES.arrayNode().add(ring(polygon.getExteriorRing(), true));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(ring(polygon.getInteriorRingN(i), false));
        }
        return rings;
    }

    private ArrayNode ring(LinearRing ring, boolean anticlockwise) {
        boolean asWanted = Orientation.isCCW(ring.getCoordinateSequence()) == anticlockwise;
        ArrayNode positions = NODES.arrayNode();
        for (Coordinate corner : (asWanted ? ring : ring.reverse()).getCoordinates()) {
            positions.add(position(corner));
        }
        return positions;
    }

    private ArrayNode position(Coordinate corner) {
        Coordinate degrees = toDegrees.apply(corner.x, corner.y);
        return NODES.arrayNode().add(degrees(degrees.x)).add(degrees(degrees.y));
    }

    private static BigDecimal degrees(double value) {
        return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }

    static double rounded(double value) {
        return Math.rint(HUNDREDTHS * value) / HUNDREDTHS;
    }

    String text() {
        ObjectNode collection = NODES.objectNode().put("type", "FeatureCollection");
        collection.set("features", features);
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(collection) + "\n";
    }
}
