package org.cupwright.app.desk.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.FirstSign;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.formats.outlines.OsmFeatures;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;

/** The map of a course's greens: GeoJSON or OpenStreetMap XML, whichever it is. */
public final class MapFile {
    private MapFile() {}

    /** @throws org.cupwright.message.Problem if it cannot be read, or has no green in it */
    public static ReadCourse read(SourceFile file, OutlineRequest wanted) {
        return FileReading.read(file, in -> CourseOutlines.read(features(in), wanted));
    }

    private static MapFeatures features(InputStream in) throws IOException, UnreadableFile {
        Predicate<Map<String, String>> essential = CourseOutlines::essential;
        return FirstSign.isOneOf("<", in) ? OsmFeatures.read(in, essential) : GeoJsonFeatures.read(in, essential);
    }
}
