package org.cupwright.app.store;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.cupwright.app.storage.CourseStore;
import org.cupwright.course.Course;

record SqlCourses(CourseDocuments documents) implements CourseStore {
    private static final AtomicReference<Read> LAST = new AtomicReference<>();

    private record Read(String document, Course course) {}

    @Override
    public List<String> ids() {
        return documents.sql().texts("SELECT DISTINCT course FROM course_version ORDER BY course");
    }

    @Override
    public Optional<Course> find(String id) {
        return documents.newest(id, row -> read(row.getString("document")));
    }

    @Override
    public Optional<Course> before(String id, long number) {
        return documents.before(id, number, row -> read(row.getString("document")));
    }

    /** One question often asks for its course several times over, and reading its document takes a while. */
    private static Course read(String document) {
        Read before = LAST.get();
        if (before == null || !before.document.equals(document)) {
            before = new Read(document, Documents.read(document, Course.class));
            LAST.set(before);
        }
        return before.course;
    }

    @Override
    public void add(Course course) {
        documents.add(course.id(), course);
    }
}
