package org.cupwright.app.store;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.std.StdSerializer;

/** A polygon as GeoJSON writes its coordinates: rings of [east, north], the outer one first. */
final class PolygonWriter extends StdSerializer<Polygon> {
    PolygonWriter() {
        super(Polygon.class);
    }

    @Override
    public void serialize(Polygon polygon, JsonGenerator out, SerializationContext context) {
        write(polygon, out);
    }

    static void write(Polygon polygon, JsonGenerator out) {
        out.writeStartArray();
        ring(polygon.getExteriorRing(), out);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            ring(polygon.getInteriorRingN(i), out);
        }
        out.writeEndArray();
    }

    private static void ring(LinearRing ring, JsonGenerator out) {
        out.writeStartArray();
        for (Coordinate point : ring.getCoordinates()) {
            double[] pair = {point.x, point.y};
            out.writeArray(pair, 0, 2);
        }
        out.writeEndArray();
    }
}
