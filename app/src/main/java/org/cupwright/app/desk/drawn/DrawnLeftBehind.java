package org.cupwright.app.desk.drawn;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.message.Message;

/**
 * Drawn ground that lies on no green of its holes any more when a course gets a new map: it is kept, and that is told.
 */
public final class DrawnLeftBehind {
    private DrawnLeftBehind() {}

    public static List<FileFinding> by(Course course, DrawnOnCourse drawn, SourceFile map) {
        return of(course, drawn).stream()
                .map(finding -> new FileFinding(map.name(), finding))
                .toList();
    }

    /** What of it lies on no green of a course, whatever was drawn last. */
    public static List<Finding> of(Course course, DrawnOnCourse drawn) {
        return drawn.all().stream()
                .filter(kept -> !liesOnAGreen(kept, course))
                .map(DrawnLeftBehind::finding)
                .toList();
    }

    private static boolean liesOnAGreen(Kept kept, Course course) {
        return kept.holes().stream()
                .map(course::find)
                .flatMap(Optional::stream)
                .map(Hole::green)
                .anyMatch(green -> green.polygon().intersects(kept.item().place()));
    }

    private static Finding finding(Kept kept) {
        Message.Argument id = new Message.Name(kept.item().id());
        return Finding.of(
                        FindingKind.DRAWN_WITHOUT_GREEN, Where.hole(kept.holes().get(0)), id)
                .at(kept.item().middle())
                .trying(id);
    }
}
