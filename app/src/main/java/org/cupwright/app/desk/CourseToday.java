package org.cupwright.app.desk;

import java.time.Clock;
import java.time.LocalDate;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.democourse.DemoCourse;

/** Which day it is on a course. */
public final class CourseToday {
    private CourseToday() {}

    /** Today on the course that is meant; before it is there, today by the clock. */
    public static LocalDate of(Stores stores, CourseChoice choice, Clock clock) {
        return choice.isMissingIn(stores) ? LocalDate.now(clock) : of(choice.in(stores), clock);
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
