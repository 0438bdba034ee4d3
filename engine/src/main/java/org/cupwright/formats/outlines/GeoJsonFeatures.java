package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.FileBounds;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.GeometryFactory;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads the features of a GeoJSON file (RFC 7946): a FeatureCollection, or one Feature.
 *
 * <p>Coordinates are longitude and latitude on WGS84 unless the file carries the {@code crs} member of the older
 * GeoJSON (2008) that names an EPSG code. Properties are taken as text.
 */
public final class GeoJsonFeatures {
    /** A traced course takes some hundred kilobytes; a whole county's map data some ten megabytes. Our choice. */
    static final long MAX_BYTES = 64L << 20;

    /** A MultiPolygon inside a FeatureCollection nests nine deep. Our choice. */
    static final int MAX_NESTING = 40;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_NESTING)
                            .maxTokenCount(FileBounds.MOST_JSON_PARTS)
                            .build())
                    .build())
            .build();

    /** {@code EPSG:2154}, {@code urn:ogc:def:crs:EPSG::2154}, {@code urn:ogc:def:crs:EPSG:6.9:2154}. */
    private static final Pattern EPSG = Pattern.compile("(?:.*:)?EPSG:(?:[0-9.]*:)?([0-9]{4,6})");

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private GeoJsonFeatures() {}

    /**
     * Reads all features of a file.
     *
     * @param in the file; not closed
     * @param essential by its tags, whether a feature that cannot be read makes the whole file useless
     * @throws UnreadableFile if the file is empty, no GeoJSON, too large, nested too deeply, or an essential feature is
     *     broken
     */
    public static MapFeatures read(InputStream in, Predicate<Map<String, String>> essential) throws IOException {
        JsonNode root = root(in);
        FeatureCollector features = new FeatureCollector(essential);
        for (JsonNode node : listOf(root)) {
            features.add(tags(node), where -> new GeoJsonShape(FACTORY, where).read(node.path("geometry")));
        }
        return features.all(frame(root));
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
        throw Finding.of(FindingKind.NOT_READABLE, Where.file(), Excerpt.of(root.toString()))
                .failure();
    }

    private static JsonNode root(InputStream in) throws IOException {
        try (JsonParser parser = MAPPER.createParser(BoundedInput.withoutMark(in, MAX_BYTES))) {
            JsonNode root = root(parser);
            if (root == null || root.isMissingNode() || root.isNull()) {
                throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), 0).failure();
            }
            return root;
        } catch (JacksonException e) {
            throw unreadable(e);
        }
    }

    private static JsonNode root(JsonParser parser) {
        try {
            JsonNode root = MAPPER.readTree(parser);
            if (root != null && parser.nextToken() != null) {
                throw Finding.of(
                                FindingKind.NOT_READABLE,
                                where(parser.currentTokenLocation()),
                                Excerpt.of(parser.getString()))
                        .failure();
            }
            return root;
        } catch (StreamConstraintsException beyond) {
            if (parser.streamReadContext().getNestingDepth() > MAX_NESTING) {
                throw Finding.of(FindingKind.NESTED_TOO_DEEPLY, Where.file(), MAX_NESTING)
                        .failure(beyond);
            }
            if (parser.currentTokenCount() > FileBounds.MOST_JSON_PARTS) {
                throw Finding.of(FindingKind.TOO_MANY_PARTS, Where.file(), FileBounds.MOST_JSON_PARTS)
                        .failure(beyond);
            }
            throw beyond;
        }
    }

    private static Message where(TokenStreamLocation at) {
        return at == null || at.getLineNr() < 1
                ? Where.file()
                : Where.lineAndColumn(at.getLineNr(), Math.max(1, at.getColumnNr()));
    }

    private static UnreadableFile unreadable(JacksonException e) {
        return Finding.of(
                        FindingKind.NOT_READABLE,
                        where(e.getLocation()),
                        Excerpt.of(String.valueOf(e.getOriginalMessage())))
                .failure(e);
    }

    /** WGS84 (RFC 7946, section 4), unless the {@code crs} member of GeoJSON 2008 names another. */
    private static CoordinateFrame frame(JsonNode root) {
        JsonNode crs = root.path("crs");
        if (crs.isMissingNode() || crs.isNull()) {
            return CoordinateFrame.of(CoordinateFrame.WGS84);
        }
        String name = crs.path("properties").path("name").asString("");
        Matcher code = EPSG.matcher(name);
        if (code.matches()) {
            return CoordinateFrame.of(Integer.parseInt(code.group(1)));
        }
        if (name.endsWith("CRS84")) {
            return CoordinateFrame.of(CoordinateFrame.WGS84);
        }
        throw Finding.of(FindingKind.UNKNOWN_FRAME, Where.file(), Excerpt.of(name.isEmpty() ? crs.toString() : name))
                .failure();
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
        double number = value.asDouble(Double.NaN);
        boolean whole = number == Math.rint(number) && Math.abs(number) < 1e15;
        return whole ? Long.toString((long) number) : value.asString();
    }
}
