package org.cupwright.app.desk;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Which holes of a course a person means. */
public final class HoleChoice {
    private HoleChoice() {}

    public static Hole hole(Course course, String id) {
        return course.find(id).orElseThrow(() -> unknown(course, id));
    }

    /** The holes named, once each and in the order of the course; every hole where none is named, or "all" is. */
    public static List<Hole> holes(Course course, List<String> named) {
        if (named.isEmpty() || named.contains("all")) {
            return course.holes();
        }
        Set<String> ids = named.stream().map(id -> hole(course, id).id()).collect(Collectors.toSet());
        return course.holes().stream().filter(hole -> ids.contains(hole.id())).toList();
    }

    private static Problem unknown(Course course, String id) {
        String known = String.join(", ", course.holes().stream().map(Hole::id).toList());
        Message what = Message.of("problem.unknownHole", new Name(id), new Name(course.id()));
        return Problem.of(what, "hole", id, Message.of("try.unknownHole", new Name(known)));
    }
}
