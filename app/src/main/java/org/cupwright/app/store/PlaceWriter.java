package org.cupwright.app.store;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.std.StdSerializer;

/** A place as GeoJSON writes its coordinates: a point as [east, north], a polygon as rings of such. */
final class PlaceWriter extends StdSerializer<Geometry> {
    PlaceWriter() {
        super(Geometry.class);
    }

    @Override
    public void serialize(Geometry place, JsonGenerator out, SerializationContext context) {
        if (place instanceof Polygon polygon) {
            PolygonWriter.write(polygon, out);
        } else {
            double[] pair = {place.getCoordinate().x, place.getCoordinate().y};
            out.writeArray(pair, 0, 2);
        }
    }
}
