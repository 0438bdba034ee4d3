package org.cupwright.formats.outlines;

import java.util.List;
import java.util.Map;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.geojson.GeoJsonWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes shapes of a course as GeoJSON (RFC 7946): longitude and latitude on WGS84, no {@code crs} member, rings by the right-hand
 * rule.
 */
public final class GeoJsonText {
    /** Nine decimals of a degree are a tenth of a millimetre. */
    private static final int DECIMALS = 9;

    private static final JsonMapper MAPPER = new JsonMapper();

    private final Projection toDegrees;
    private final ArrayNode features = MAPPER.createArrayNode();

    /**
     * @param epsg the frame of the shapes to come
     */
    public GeoJsonText(int epsg) {
        toDegrees = Projection.between(CoordinateFrame.of(epsg), CoordinateFrame.of(CoordinateFrame.WGS84));
    }

    /**
     * Adds a feature.
     *
     * @param shape in the course's frame
     * @param properties texts, numbers, yes or no, or lists of texts; in their order
     */
    public GeoJsonText add(Geometry shape, Map<String, ?> properties) {
        GeoJsonWriter writer = new GeoJsonWriter(DECIMALS);
        writer.setEncodeCRS(false);
        writer.setForceCCW(true);
        JsonNode geometry = MAPPER.readTree(writer.write(toDegrees.apply(shape)));
        ObjectNode feature = features.addObject();
        feature.put("type", "Feature");
        feature.set("properties", MAPPER.valueToTree(properties));
        feature.set("geometry", geometry);
        return this;
    }

    /** The whole document, one feature to a line. */
    public String text() {
        List<String> lines = features.values().stream().map(JsonNode::toString).toList();
        return "{\"type\":\"FeatureCollection\",\"features\":[\n" + String.join(",\n", lines) + "\n]}\n";
    }
}
