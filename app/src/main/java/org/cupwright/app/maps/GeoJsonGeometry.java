package org.cupwright.app.maps;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.cupwright.formats.Projection;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Points and areas of the course as GeoJSON geometries (RFC 7946, sections 3.1 and 3.1.6). */
final class GeoJsonGeometry {
    /** Decimals of a degree: about a millimetre. */
    private static final int DECIMALS = 8;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Projection toDegrees;

    GeoJsonGeometry(Projection toDegrees) {
        this.toDegrees = toDegrees;
    }

    /** A point, a polygon, or several polygons. */
    ObjectNode of(Geometry shape) {
        if (shape instanceof Point point) {
            return node("Point", position(point.getCoordinate()));
        }
        if (shape instanceof Polygon polygon) {
            return node("Polygon", rings(polygon));
        }
        ArrayNode polygons = NODES.arrayNode();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            polygons.add(rings((Polygon) shape.getGeometryN(i)));
        }
        return node("MultiPolygon", polygons);
    }

    private static ObjectNode node(String type, ArrayNode coordinates) {
        ObjectNode node = NODES.objectNode();
        node.put("type", type);
        node.set("coordinates", coordinates);
        return node;
    }

    private ArrayNode rings(Polygon polygon) {
        ArrayNode rings = NODES.arrayNode();
        rings.add(ring(polygon.getExteriorRing(), true));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(ring(polygon.getInteriorRingN(i), false));
        }
        return rings;
    }

    /** Outer rings run anticlockwise, inner ones clockwise. */
    private ArrayNode ring(LinearRing ring, boolean anticlockwise) {
        boolean asWanted = Orientation.isCCW(ring.getCoordinateSequence()) == anticlockwise;
        LinearRing turned = asWanted ? ring : ring.reverse();
        ArrayNode positions = NODES.arrayNode();
        for (Coordinate corner : turned.getCoordinates()) {
            positions.add(position(corner));
        }
        return positions;
    }

    private ArrayNode position(Coordinate corner) {
        Coordinate degrees = toDegrees.apply(corner.x, corner.y);
        return NODES.arrayNode().add(rounded(degrees.x)).add(rounded(degrees.y));
    }

    private static BigDecimal rounded(double degrees) {
        return new BigDecimal(degrees).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
}
