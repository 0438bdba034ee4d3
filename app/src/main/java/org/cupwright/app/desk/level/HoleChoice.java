package org.cupwright.app.desk.level;

import java.util.List;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;

/** Which holes are meant by a list of names. */
final class HoleChoice {
    private HoleChoice() {}

    /** The ids of the holes named; of every hole where none is named, or "all" is. */
    static List<String> ids(Course course, List<String> named) {
        if (named.isEmpty() || named.equals(List.of("all"))) {
            return course.holes().stream().map(Hole::id).toList();
        }
        return named.stream().map(id -> CourseChoice.hole(course, id).id()).toList();
    }
}
