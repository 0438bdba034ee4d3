package org.cupwright.app.desk.begin;

import java.util.Map;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;

/** Where the invented course of {@link MadeCourse} lies. */
public final class MadePlace {
    private MadePlace() {}

    /** As it is typed in the first step. */
    public static Map<String, String> ofMap() {
        var at = Projection.between(CoordinateFrame.of(32626), CoordinateFrame.of(CoordinateFrame.WGS84))
                .apply(MadeCourse.WEST, MadeCourse.SOUTH);
        return Map.of("longitude", Double.toString(at.x), "latitude", Double.toString(at.y));
    }
}
