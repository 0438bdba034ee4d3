package org.cupwright.app.store;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;

/** Reads what {@link PolygonWriter} wrote. */
final class PolygonReader extends StdDeserializer<Polygon> {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    PolygonReader() {
        super(Polygon.class);
    }

    @Override
    public Polygon deserialize(JsonParser parser, DeserializationContext context) {
        return read(parser);
    }

    static Polygon read(JsonParser parser) {
        return polygon(parser.readValueAs(double[][][].class));
    }

    static Polygon polygon(double[][][] rings) {
        LinearRing[] holes = new LinearRing[rings.length - 1];
        for (int i = 1; i < rings.length; i++) {
            holes[i - 1] = ring(rings[i]);
        }
        return FACTORY.createPolygon(ring(rings[0]), holes);
    }

    private static LinearRing ring(double[][] pairs) {
        Coordinate[] points = new Coordinate[pairs.length];
        for (int i = 0; i < pairs.length; i++) {
            points[i] = new Coordinate(pairs[i][0], pairs[i][1]);
        }
        return FACTORY.createLinearRing(points);
    }
}
