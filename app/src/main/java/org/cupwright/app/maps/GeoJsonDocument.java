package org.cupwright.app.maps;

import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.locationtech.jts.geom.Geometry;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A feature collection that is being written (RFC 7946): WGS84, longitude before latitude, outer rings anticlockwise. */
final class GeoJsonDocument {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final double HUNDREDTHS = 100;

    private final GeoJsonGeometry shapes;
    private final ArrayNode features = NODES.arrayNode();

    /** @param epsg the frame the shapes are in */
    GeoJsonDocument(int epsg) {
        this.shapes = new GeoJsonGeometry(
                Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84)));
    }

    void add(Geometry shape, ObjectNode properties) {
        ObjectNode feature = NODES.objectNode();
        feature.put("type", "Feature");
        feature.set("geometry", shapes.of(shape));
        feature.set("properties", properties);
        features.add(feature);
    }

    String text() {
        ObjectNode collection = NODES.objectNode();
        collection.put("type", "FeatureCollection");
        collection.set("features", features);
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(collection) + "\n";
    }

    static double rounded(double value) {
        return Math.rint(HUNDREDTHS * value) / HUNDREDTHS;
    }
}
