package org.cupwright.app.store;

import org.cupwright.course.Outline;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.std.StdSerializer;

/** A green's outline as its polygon. */
final class OutlineWriter extends StdSerializer<Outline> {
    OutlineWriter() {
        super(Outline.class);
    }

    @Override
    public void serialize(Outline outline, JsonGenerator out, SerializationContext context) {
        PolygonWriter.write(outline.polygon(), out);
    }
}
