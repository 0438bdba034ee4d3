package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.course.Course;
import org.cupwright.formats.items.GroundFile;
import org.cupwright.formats.items.GroundItems;

/** Reads what a file says of the ground of a course's greens. */
final class GroundFileReading {
    private GroundFileReading() {}

    /** Every item must be understood: a closed patch that is passed over would be cut into. */
    static GroundItems read(Optional<SourceFile> file, Course course) {
        if (file.isEmpty()) {
            return new GroundItems(Map.of(), List.of());
        }
        GroundItems items = FileReading.read(file.get(), in -> GroundFile.read(in, course));
        if (!items.findings().isEmpty()) {
            throw FileReading.problem(items.findings().get(0), file.get().name());
        }
        return items;
    }
}
