package org.cupwright.app.desk.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/**
 * What is to be said in an entry. It is asked where the entry is decided, once for each hole, since a place in paces is
 * one on the green as it is then, and a cut as planned one of the plan that holds then.
 */
@FunctionalInterface
public interface Says {
    /** What is said of one hole, or of the whole course. */
    Said on(Occasion occasion);

    /**
     * What an entry is about.
     *
     * @param day the day that is spoken of
     * @param hole the hole; empty for the whole course
     * @param was what an entry says that is to be corrected; empty for a new one
     * @param planned where the day's plan has the hole; empty where it has none
     */
    record Occasion(
            Course course,
            Policy policy,
            LocalDate day,
            Optional<Hole> hole,
            Optional<Payload> was,
            Optional<MapPoint> planned) {}

    /**
     * What is said.
     *
     * @param when when it happened; empty where nobody says
     * @param remarks how what was given was understood, where it could be understood otherwise
     */
    record Said(Payload payload, Optional<Instant> when, List<Message> remarks) {}
}
