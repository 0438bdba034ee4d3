package org.cupwright.app.session;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * Which course a person means.
 *
 * @param id the one that was named; empty: the only one there is
 */
public record CourseChoice(Optional<String> id) {
    /** The course; there must be one. */
    public Course in(Stores stores) {
        return stores.courses().find(idIn(stores)).orElseThrow();
    }

    /** The id of a course that is there; the course itself is not read. */
    public String idIn(Stores stores) {
        List<String> ids = stores.courses().ids();
        if (ids.isEmpty()) {
            throw Problem.of("noCourse", "data", id.orElse(""));
        }
        Name known = new Name(String.join(", ", ids));
        if (id.isEmpty() && ids.size() > 1) {
            throw Problem.of("whichCourse", "course", "", known);
        }
        String meant = id.orElse(ids.get(0));
        if (!ids.contains(meant)) {
            Message unknown = Message.of("problem.unknownCourse", new Name(meant));
            throw Problem.of(unknown, "course", meant, Message.of("try.whichCourse", known));
        }
        return meant;
    }

    /** Whether there is no such course yet, or none at all. */
    public boolean isMissingIn(Stores stores) {
        List<String> ids = stores.courses().ids();
        return id.map(named -> !ids.contains(named)).orElse(ids.isEmpty());
    }
}
