package org.cupwright.app.office.frame;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cupwright.app.office.frame.Frame.CourseName;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Course;

/** The names of courses, for the choice between them. */
final class CourseNames {
    private CourseNames() {}

    /** All courses by their names; none where there is nothing to choose. */
    static List<CourseName> of(Visit visit) {
        return visit.courses().size() < 2
                ? List.of()
                : named(visit.session().read(stores -> names(visit.courses(), stores)));
    }

    private static Map<String, String> names(List<String> ids, Stores stores) {
        Map<String, String> names = new TreeMap<>();
        ids.forEach(
                id -> names.put(id, stores.courses().find(id).map(Course::name).orElse(id)));
        return names;
    }

    private static List<CourseName> named(Map<String, String> names) {
        return names.entrySet().stream()
                .map(course -> {
                    boolean alone = Collections.frequency(names.values(), course.getValue()) == 1;
                    return new CourseName(
                            course.getKey(), alone ? course.getValue() : course.getValue() + " · " + course.getKey());
                })
                .toList();
    }
}
