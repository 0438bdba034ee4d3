package org.cupwright.app.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.course.Course;
import org.cupwright.democourse.DemoCourse;

/** Which day it is on a course. */
public final class CourseToday {
    private CourseToday() {}

    /** Today on the course that is meant; before it is there, today by the clock. */
    public static LocalDate of(DataFolder folder, Optional<String> courseId, Clock clock) {
        return folder.read(stores -> {
            List<String> ids = stores.courses().ids();
            boolean notThere = courseId.map(id -> !ids.contains(id)).orElse(ids.isEmpty());
            return notThere ? LocalDate.now(clock) : of(CourseChoice.course(stores, courseId), clock);
        });
    }

    /**
     * The calendar day in the course's zone; the invented course has a fixed one, so that its morning never changes.
     */
    public static LocalDate of(Course course, Clock clock) {
        return course.id().equals(DemoCourse.ID)
                ? DemoCourse.TODAY
                : LocalDate.now(clock.withZone(course.frame().zone()));
    }
}
