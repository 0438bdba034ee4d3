package org.cupwright.app.desk.intake;

import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.FirstSign;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.formats.outlines.OsmFeatures;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;

/** Reads a course from a map file, GeoJSON or OpenStreetMap XML, whichever it is. */
final class OutlineReading {
    private OutlineReading() {}

    static ReadCourse read(SourceFile file, OutlineRequest request) {
        Predicate<Map<String, String>> essential = CourseOutlines::essential;
        return FileReading.read(file, in -> {
            MapFeatures map =
                    FirstSign.isOneOf("<", in) ? OsmFeatures.read(in, essential) : GeoJsonFeatures.read(in, essential);
            return CourseOutlines.read(map, request);
        });
    }
}
