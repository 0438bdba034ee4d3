package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A way or a relation of an OpenStreetMap file.
 *
 * @param name {@code way} or {@code relation}
 * @param parts nodes of a way, in their order; ways of a relation, of whose roles "inner" matters
 */
record OsmElement(String name, long id, Map<String, String> tags, List<Part> parts) {
    /** What it is made of. */
    record Part(long id, String role) {}

    OsmElement(String name, long id) {
        this(name, id, new LinkedHashMap<>(), new ArrayList<>());
    }

    boolean isGolf() {
        return tags.containsKey("golf") || "golf_course".equals(tags.get("leisure"));
    }

    /** Its tags with its own name added, so that findings can name it. */
    Map<String, String> namedTags() {
        Map<String, String> named = new LinkedHashMap<>(tags);
        named.put("@id", name + "/" + id);
        return named;
    }
}
