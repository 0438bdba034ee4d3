package org.cupwright.app.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.green.GroundItem;

/** What a file says of the ground of a course's greens. */
record GroundFile(Map<String, List<GroundItem>> byHole) {
    static GroundFile read(Optional<SourceFile> file, CourseDay day) {
        return new GroundFile(Map.of());
    }

    List<GroundItem> of(String hole) {
        return byHole.getOrDefault(hole, List.of());
    }
}
