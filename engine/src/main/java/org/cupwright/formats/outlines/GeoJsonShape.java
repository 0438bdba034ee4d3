package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.JsonNode;

/**
 * The geometry of one GeoJSON feature (RFC 7946, section 3.1).
 *
 * <p>Built here and not by the geometry library's own reader, because that one says neither which ring is at fault nor
 * how: here an open ring is told with its two ends. Third and further numbers of a position are ignored.
 */
record GeoJsonShape(GeometryFactory factory, Message where) {
    /**
     * @throws UnreadableFile if the geometry is missing, of an unknown type, or its coordinates are not what its type
     *     asks for
     */
    Geometry read(JsonNode geometry) {
        JsonNode parts = geometry.path("coordinates");
        String type = geometry.path("type").asString("");
        return switch (type) {
            case "Point" -> point(parts);
            case "MultiPoint" ->
                factory.createMultiPoint(each(parts, this::point).toArray(Point[]::new));
            case "LineString" -> line(parts);
            case "MultiLineString" ->
                factory.createMultiLineString(each(parts, this::line).toArray(LineString[]::new));
            case "Polygon" -> polygon(parts);
            case "MultiPolygon" ->
                factory.createMultiPolygon(each(parts, this::polygon).toArray(Polygon[]::new));
            default -> throw failure(FindingKind.WRONG_SHAPE, type.isEmpty() ? excerpt(geometry) : Excerpt.of(type));
        };
    }

    private Point point(JsonNode position) {
        return factory.createPoint(coordinate(position));
    }

    private LineString line(JsonNode positions) {
        List<Coordinate> points = each(positions, this::coordinate);
        if (points.size() < 2) {
            throw failure(FindingKind.WRONG_SHAPE, excerpt(positions));
        }
        return factory.createLineString(points.toArray(Coordinate[]::new));
    }

    private Polygon polygon(JsonNode rings) {
        List<LinearRing> read = each(rings, this::ring);
        if (read.isEmpty()) {
            throw failure(FindingKind.WRONG_SHAPE, excerpt(rings));
        }
        LinearRing[] inner = read.subList(1, read.size()).toArray(LinearRing[]::new);
        return factory.createPolygon(read.get(0), inner);
    }

    private LinearRing ring(JsonNode positions) {
        return Polygons.ring(each(positions, this::coordinate), factory, where);
    }

    private Coordinate coordinate(JsonNode position) {
        double x = position.path(0).asDouble(Double.NaN);
        double y = position.path(1).asDouble(Double.NaN);
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw failure(FindingKind.NOT_A_NUMBER, excerpt(position));
        }
        return new Coordinate(x, y);
    }

    private <T> List<T> each(JsonNode list, Function<JsonNode, T> read) {
        if (!list.isArray()) {
            throw failure(FindingKind.WRONG_SHAPE, excerpt(list));
        }
        List<T> all = new ArrayList<>(list.size());
        for (JsonNode item : list) {
            all.add(read.apply(item));
        }
        return all;
    }

    private static String excerpt(JsonNode node) {
        return Excerpt.of(node.toString());
    }

    private UnreadableFile failure(FindingKind kind, String value) {
        return Finding.of(kind, where, value).failure();
    }
}
