package org.cupwright.app.storage;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;

/** Courses, each with every version that was ever imported. */
public interface CourseStore {
    /** The ids of all courses, sorted. */
    List<String> ids();

    /** The newest version of a course. */
    Optional<Course> find(String id);

    /** The version before that of a number, as {@link Versions.Part#COURSE} has it; empty before the first. */
    Optional<Course> before(String id, long number);

    /** Adds a version. */
    void add(Course course);
}
