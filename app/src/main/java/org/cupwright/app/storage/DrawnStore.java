package org.cupwright.app.storage;

/** Ground that people drew, each course with every version that there ever was. */
public interface DrawnStore {
    /** The newest of a course; nothing where there is none. */
    DrawnOnCourse of(String courseId);

    void add(String courseId, DrawnOnCourse all);
}
