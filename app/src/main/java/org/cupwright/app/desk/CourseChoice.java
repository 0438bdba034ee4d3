package org.cupwright.app.desk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Which course and hole a person means. */
public final class CourseChoice {
    private CourseChoice() {}

    /** The course of that id; without an id the only course there is. */
    public static Course course(Stores stores, Optional<String> wanted) {
        return stores.courses().find(id(stores, wanted)).orElseThrow();
    }

    /** The id of a course that is there; the course itself is not read. */
    public static String id(Stores stores, Optional<String> wanted) {
        List<String> ids = stores.courses().ids();
        if (ids.isEmpty()) {
            throw Problem.of(
                    Message.of("problem.noCourse"),
                    Message.of("where.dataFolder"),
                    wanted.orElse(""),
                    Message.of("try.noCourse"));
        }
        if (wanted.isEmpty() && ids.size() > 1) {
            throw Problem.of(
                    Message.of("problem.whichCourse"),
                    Message.of("where.option", new Name("--course")),
                    "",
                    Message.of("try.whichCourse", new Name(String.join(", ", ids))));
        }
        String id = wanted.orElse(ids.get(0));
        if (!ids.contains(id)) {
            throw unknownCourse(id, ids);
        }
        return id;
    }

    public static Hole hole(Course course, String id) {
        return course.find(id).orElseThrow(() -> unknownHole(course, id));
    }

    /** The holes named, once each and in the order of the course; every hole where none is named, or "all" is. */
    public static List<Hole> holes(Course course, List<String> named) {
        if (named.isEmpty() || named.contains("all")) {
            return course.holes();
        }
        Set<String> ids = named.stream().map(id -> hole(course, id).id()).collect(Collectors.toSet());
        return course.holes().stream().filter(hole -> ids.contains(hole.id())).toList();
    }

    private static Problem unknownCourse(String id, List<String> ids) {
        return Problem.of(
                Message.of("problem.unknownCourse", new Name(id)),
                Message.of("where.option", new Name("--course")),
                id,
                Message.of("try.whichCourse", new Name(String.join(", ", ids))));
    }

    private static Problem unknownHole(Course course, String id) {
        String known = String.join(", ", course.holes().stream().map(Hole::id).toList());
        return Problem.of(
                Message.of("problem.unknownHole", new Name(id), new Name(course.id())),
                Message.of("where.option", new Name("--hole")),
                id,
                Message.of("try.unknownHole", new Name(known)));
    }
}
