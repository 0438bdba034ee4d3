package org.cupwright.examples;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Shapes as GeoJSON (RFC 7946): longitude and latitude on WGS84, outer rings anticlockwise; polygons without holes
 * only.
 */
final class MapText {
    /** Nine decimals of a degree are a tenth of a millimetre. */
    private static final int DECIMALS = 9;

    private static final JsonMapper MAPPER = new JsonMapper();

    private final Projection toDegrees;
    private final List<String> features = new ArrayList<>();

    /** @param epsg the frame of the shapes to come */
    MapText(int epsg) {
        toDegrees = Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84));
    }

    /** Adds a feature; its properties in their order. */
    MapText add(Geometry shape, Map<String, ?> properties) {
        ObjectNode feature = MAPPER.createObjectNode().put("type", "Feature");
        feature.set("properties", MAPPER.valueToTree(properties));
        ObjectNode geometry = feature.putObject("geometry").put("type", shape.getGeometryType());
        ArrayNode coordinates = geometry.putArray("coordinates");
        List<Coordinate> points =
                new ArrayList<>(Arrays.asList(toDegrees.apply(shape).getCoordinates()));
        if (shape.getDimension() == 0) {
            position(coordinates, points.get(0));
        } else if (shape instanceof Polygon) {
            boolean anticlockwise = Orientation.isCCW(points.toArray(Coordinate[]::new));
            ArrayNode ring = coordinates.addArray();
            for (int i = 0; i < points.size(); i++) {
                position(ring.addArray(), points.get(anticlockwise ? i : points.size() - 1 - i));
            }
        } else {
            points.forEach(point -> position(coordinates.addArray(), point));
        }
        features.add(feature.toString());
        return this;
    }

    private static void position(ArrayNode position, Coordinate point) {
        position.add(rounded(point.x)).add(rounded(point.y));
    }

    private static double rounded(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .doubleValue();
    }

    /** The whole document, one feature to a line. */
    String text() {
        return "{\"type\":\"FeatureCollection\",\"features\":[\n" + String.join(",\n", features) + "\n]}\n";
    }
}
