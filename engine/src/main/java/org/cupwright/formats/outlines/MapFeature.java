package org.cupwright.formats.outlines;

import java.util.Map;
import java.util.Optional;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/**
 * One feature of a map file: a shape with tags.
 *
 * @param shape in the file's own frame, east first
 * @param tags properties or tags, all as text
 * @param where which feature of the file it is
 */
public record MapFeature(Geometry shape, Map<String, String> tags, Message where) {
    public MapFeature {
        tags = Map.copyOf(tags);
    }

    /** The value of a tag, when it is there and not blank. */
    public Optional<String> tag(String key) {
        return Optional.ofNullable(tags.get(key)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** Whether a tag has a value. */
    public boolean is(String key, String value) {
        return value.equals(tags.get(key));
    }

    MapFeature withShape(Geometry other) {
        return new MapFeature(other, tags, where);
    }
}
