package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import tools.jackson.databind.JsonNode;

/**
 * Reads the features of a GeoJSON file (RFC 7946): a FeatureCollection, or one Feature.
 *
 * <p>Coordinates are longitude and latitude on WGS84 unless the file carries the {@code crs} member of the older GeoJSON (2008)
 * that names an EPSG code. Properties are taken as text. A feature whose geometry cannot be read is left out with a finding,
 * unless it is one of those the caller cannot do without.
 */
public final class GeoJsonFeatures {
    private final Predicate<Map<String, String>> essential;
    private final GeometryFactory factory = new GeometryFactory();
    private final List<MapFeature> features = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private GeoJsonFeatures(Predicate<Map<String, String>> essential) {
        this.essential = essential;
    }

    /**
     * Reads all features of a file.
     *
     * @param in the file; not closed
     * @param essential by its tags, whether a feature that cannot be read makes the whole file useless
     * @throws UnreadableFile if the file is empty, no GeoJSON, too large, nested too deeply, or an essential feature is broken
     */
    public static MapFeatures read(InputStream in, Predicate<Map<String, String>> essential) throws IOException {
        JsonNode root = JsonText.read(in);
        GeoJsonFeatures reader = new GeoJsonFeatures(essential);
        reader.readAll(listOf(root));
        return new MapFeatures(GeoJsonFrame.of(root), reader.features, reader.findings);
    }

    private static List<JsonNode> listOf(JsonNode root) {
        String type = root.path("type").asString("");
        JsonNode list = root.path("features");
        if (type.equals("FeatureCollection") && list.isArray()) {
            return List.copyOf(list.values());
        }
        if (type.equals("Feature")) {
            return List.of(root);
        }
        Message.Argument start = new Message.Name(Excerpt.of(root.toString()));
        throw Finding.of(FindingKind.NOT_READABLE, Where.file(), start).failure();
    }

    private void readAll(List<JsonNode> nodes) {
        for (int i = 0; i < nodes.size(); i++) {
            read(nodes.get(i), i + 1);
        }
    }

    private void read(JsonNode node, int number) {
        Map<String, String> tags = tags(node);
        Message where = Where.feature(number, Tags.label(tags));
        try {
            Geometry shape = new GeoJsonShape(factory, where).read(node.path("geometry"));
            features.add(new MapFeature(shape, tags, where));
        } catch (UnreadableFile trouble) {
            if (essential.test(tags)) {
                throw trouble;
            }
            findings.add(Tags.leftOut(trouble.finding()));
        }
    }

    private static Map<String, String> tags(JsonNode feature) {
        Map<String, String> tags = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> property : feature.path("properties").properties()) {
            JsonNode value = property.getValue();
            if (value.isValueNode() && !value.isNull()) {
                tags.put(property.getKey(), value.isNumber() ? plainNumber(value) : value.asString());
            }
        }
        return tags;
    }

    /** Drawing programs write {@code ref} 7 as 7 or 7.0: both are hole 7. */
    private static String plainNumber(JsonNode value) {
        double number = value.doubleValue();
        boolean whole = number == Math.rint(number) && Math.abs(number) < 1e15;
        return whole ? Long.toString((long) number) : value.asString();
    }
}
