package org.cupwright.app.answers.json;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A JSON object being put together: what it says by name, in the order said. The values may be any that {@link Shapes}
 * knows.
 */
public final class Shape {
    private final Map<String, Object> parts = new LinkedHashMap<>();

    public Shape with(String name, Object value) {
        parts.put(name, value);
        return this;
    }

    /** The same with all that another says. */
    Shape with(Shape other) {
        parts.putAll(other.parts);
        return this;
    }

    @JsonValue
    Map<String, Object> parts() {
        return Collections.unmodifiableMap(parts);
    }
}
