package org.cupwright.app.desk.ground;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;

/**
 * Says anew from where a green is played to: from it front and back, left and right are counted. What is said is a
 * version of the course, as a map that is brought in is.
 */
public record TurnPlay(Session session) {
    /** What was changed: the holes, and the direction before and after in degrees, if any. */
    public record Answer(List<String> holes, Optional<Long> before, Optional<Long> after) {}

    /**
     * Keeps a direction. Holes of one practice green are played from one direction; each hole of a double green has
     * its own. Set back to what it was, a line of the map is there again as it was.
     *
     * @param play the direction of play at the green; empty: nobody knows
     * @param version of the course that was seen
     * @throws Problem if it is that already, or the course is another by now
     */
    public Answer keep(String holeId, Optional<Heading> play, long version) {
        return session.decide(Right.SURVEY, stores -> {
            Course course = session.course(stores);
            SeenCourse.refuseIfOther(stores, course, version);
            Hole hole = HoleChoice.hole(course, holeId);
            Optional<Long> before = hole.lineOfPlay().map(TurnPlay::degrees);
            Optional<Long> after = play.map(TypedHeading::degrees);
            if (before.equals(after)) {
                throw Problem.of(
                        "ground.samePlay", "play", after.map(String::valueOf).orElse(""));
            }
            List<String> holes = course.isPractice(holeId) ? course.onGreenOf(hole) : List.of(holeId);
            Optional<Course> older = stores.courses().before(course.id(), version);
            stores.courses()
                    .add(course.withHoles(course.holes().stream()
                            .map(one -> holes.contains(one.id()) ? turned(one, play, older) : one)
                            .toList()));
            stores.audit()
                    .add(session.did(
                            AuditKind.PLAY_TURNED,
                            new About(course.id(), new Name(String.join(", ", holes))),
                            before.map(TurnPlay::said),
                            after.map(TurnPlay::said)));
            return new Answer(holes, before, after);
        });
    }

    private static Hole turned(Hole hole, Optional<Heading> play, Optional<Course> older) {
        if (play.isEmpty()) {
            return hole.withoutLineOfPlay();
        }
        long degrees = TypedHeading.degrees(play.get());
        return hole.withLineOfPlay(older.flatMap(course -> course.find(hole.id()))
                .flatMap(Hole::lineOfPlay)
                .filter(line -> degrees(line) == degrees)
                .orElseGet(() -> LineOfPlay.towards(hole.green(), play.get())));
    }

    private static long degrees(LineOfPlay line) {
        return TypedHeading.degrees(line.atGreen());
    }

    private static Argument said(long degrees) {
        return new Name(degrees + "°");
    }
}
