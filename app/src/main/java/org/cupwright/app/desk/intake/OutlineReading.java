package org.cupwright.app.desk.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.formats.outlines.OsmFeatures;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;

/** Reads a course from a map file, GeoJSON or OpenStreetMap XML, whichever it is. */
final class OutlineReading {
    /** How far into a file its first sign is looked for: our choice. */
    private static final int LOOK_BYTES = 4096;

    private OutlineReading() {}

    static ReadCourse read(SourceFile file, OutlineRequest request) {
        Predicate<Map<String, String>> essential = CourseOutlines::essential;
        return FileReading.read(file, in -> {
            MapFeatures map = isXml(in) ? OsmFeatures.read(in, essential) : GeoJsonFeatures.read(in, essential);
            return CourseOutlines.read(map, request);
        });
    }

    /** Whether the first sign that is not blank is that of XML; the stream stands at its beginning afterwards. */
    private static boolean isXml(InputStream in) throws IOException {
        in.mark(LOOK_BYTES);
        String start = new String(in.readNBytes(LOOK_BYTES / 2), java.nio.charset.StandardCharsets.UTF_8);
        in.reset();
        return start.replace("\uFEFF", "").stripLeading().startsWith("<");
    }
}
