package org.cupwright.app.store;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.annotation.JsonDeserialize;
import tools.jackson.databind.annotation.JsonSerialize;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.util.StdConverter;

/**
 * Places as GeoJSON writes their coordinates: a point as [east, north], a polygon as rings of such, the outer one
 * first, a green's outline as its polygon.
 */
final class PlaceDocuments {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private PlaceDocuments() {}

    static JsonMapper.Builder addedTo(JsonMapper.Builder builder) {
        return builder.addMixIn(Polygon.class, OfPolygon.class)
                .addMixIn(Geometry.class, OfPlace.class)
                .addMixIn(Outline.class, OfOutline.class);
    }

    @JsonSerialize(converter = Coordinates.class)
    @JsonDeserialize(converter = ToPolygon.class)
    private interface OfPolygon {}

    @JsonSerialize(converter = Coordinates.class)
    @JsonDeserialize(converter = ToPlace.class)
    private interface OfPlace {}

    /** An outline is written as its polygon. */
    private abstract static class OfOutline {
        @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
        OfOutline(Polygon polygon) {}

        @JsonValue
        abstract Polygon polygon();
    }

    static final class Coordinates extends StdConverter<Geometry, Object> {
        @Override
        public Object convert(Geometry place) {
            return place instanceof Polygon polygon ? rings(polygon) : pair(place.getCoordinate());
        }
    }

    static final class ToPolygon extends StdConverter<double[][][], Polygon> {
        @Override
        public Polygon convert(double[][][] rings) {
            return polygon(rings);
        }
    }

    static final class ToPlace extends StdConverter<JsonNode, Geometry> {
        @Override
        public Geometry convert(JsonNode node) {
            return node.path(0).isNumber()
                    ? FACTORY.createPoint(coordinate(
                            new double[] {node.path(0).asDouble(), node.path(1).asDouble()}))
                    : polygon(JsonMapper.shared().treeToValue(node, double[][][].class));
        }
    }

    private static double[][][] rings(Polygon polygon) {
        return Stream.concat(
                        Stream.of(polygon.getExteriorRing()),
                        IntStream.range(0, polygon.getNumInteriorRing()).mapToObj(polygon::getInteriorRingN))
                .map(ring -> Arrays.stream(ring.getCoordinates())
                        .map(PlaceDocuments::pair)
                        .toArray(double[][]::new))
                .toArray(double[][][]::new);
    }

    private static double[] pair(Coordinate point) {
        return new double[] {point.x, point.y};
    }

    private static Polygon polygon(double[][][] rings) {
        LinearRing[] all = Arrays.stream(rings)
                .map(ring -> FACTORY.createLinearRing(
                        Arrays.stream(ring).map(PlaceDocuments::coordinate).toArray(Coordinate[]::new)))
                .toArray(LinearRing[]::new);
        return FACTORY.createPolygon(all[0], Arrays.copyOfRange(all, 1, all.length));
    }

    private static Coordinate coordinate(double[] pair) {
        return new Coordinate(pair[0], pair[1]);
    }
}
