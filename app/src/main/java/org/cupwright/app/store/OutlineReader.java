package org.cupwright.app.store;

import org.cupwright.course.Outline;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;

/** Reads what {@link OutlineWriter} wrote. */
final class OutlineReader extends StdDeserializer<Outline> {
    OutlineReader() {
        super(Outline.class);
    }

    @Override
    public Outline deserialize(JsonParser parser, DeserializationContext context) {
        return new Outline(PolygonReader.read(parser));
    }
}
