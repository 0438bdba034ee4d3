package org.cupwright.app.store;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.deser.std.StdDeserializer;

/** Reads what {@link PlaceWriter} wrote. */
final class PlaceReader extends StdDeserializer<Geometry> {
    PlaceReader() {
        super(Geometry.class);
    }

    @Override
    public Geometry deserialize(JsonParser parser, DeserializationContext context) {
        JsonNode node = context.readTree(parser);
        return node.path(0).isNumber()
                ? new GeometryFactory()
                        .createPoint(new Coordinate(
                                node.path(0).asDouble(), node.path(1).asDouble()))
                : PolygonReader.polygon(context.readTreeAsValue(node, double[][][].class));
    }
}
