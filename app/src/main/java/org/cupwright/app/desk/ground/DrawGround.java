package org.cupwright.app.desk.ground;

import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * Draws the edge of a green anew, and the bunkers and water about it. A drawing is a version of the course, as a map
 * that is brought in is.
 */
public record DrawGround(Session session) {
    /**
     * A green as it is drawn.
     *
     * @param version of the course: what is drawn on it is refused once there is a later one
     * @param grid in which its corners are written
     */
    public record Answer(Course course, Hole hole, long version, PaceGrid grid) {}

    public Answer show(String holeId) {
        return session.read(stores -> {
            CourseDay today = today(stores);
            Hole hole = HoleChoice.hole(today.course(), holeId);
            return new Answer(
                    today.course(), hole, SeenCourse.version(stores, today.course()), PaceGrid.of(hole, pace(today)));
        });
    }

    /**
     * What a drawing would change; nothing is kept.
     *
     * @throws Problem if it can be no edge, bunker or water, or the course is another by now
     */
    public GroundChange look(String holeId, GroundWish wish, long version) {
        return session.look(Right.SURVEY, stores -> {
            CourseDay today = today(stores);
            return new WhatFollows(stores, today).of(drawn(stores, today, holeId, wish, version));
        });
    }

    /** Keeps a drawing, and says what follows. */
    public GroundChange keep(String holeId, GroundWish wish, long version) {
        return session.decide(Right.SURVEY, stores -> {
            CourseDay today = today(stores);
            Drawn drawn = drawn(stores, today, holeId, wish, version);
            GroundChange change = new WhatFollows(stores, today).of(drawn);
            stores.courses().add(drawn.after());
            stores.audit().add(session.did(kind(drawn), about(today.course(), holeId), before(drawn), after(drawn)));
            return change;
        });
    }

    /**
     * Takes the last drawing back: the course is again as it was before.
     *
     * @throws Problem if the last version of the course was not drawn about this green, or there is a later one
     */
    public void takeBack(String holeId, long version) {
        session.decide(Right.SURVEY, stores -> {
            CourseDay today = today(stores);
            Course course = today.course();
            SeenCourse.refuseIfOther(stores, course, version);
            Hole hole = HoleChoice.hole(course, holeId);
            Course before = stores.courses()
                    .before(course.id(), version)
                    .filter(older -> Drawn.isDrawn(older, course, hole))
                    .orElseThrow(() -> Problem.of("ground.notDrawn", "hole", holeId));
            stores.courses().add(before);
            stores.audit()
                    .add(session.did(
                            AuditKind.DRAWING_TAKEN_BACK, about(course, holeId), Optional.empty(), Optional.empty()));
            return before;
        });
    }

    private CourseDay today(Stores stores) {
        return CourseDay.of(stores, DayQuestion.of(CourseToday.of(session.course(stores), session.clock())), session);
    }

    private static double pace(CourseDay today) {
        return today.policy().get(PlacePolicy.PACE_METRES);
    }

    private static Drawn drawn(Stores stores, CourseDay today, String holeId, GroundWish wish, long version) {
        SeenCourse.refuseIfOther(stores, today.course(), version);
        return Drawn.of(today.course(), HoleChoice.hole(today.course(), holeId), wish, pace(today));
    }

    private static About about(Course course, String holeId) {
        return new About(course.id(), new Name(holeId));
    }

    private static AuditKind kind(Drawn drawn) {
        if (drawn.hazard().isNone()) {
            return AuditKind.EDGE_DRAWN;
        }
        return switch (drawn.hazard().kind()) {
            case BUNKER -> AuditKind.BUNKER_DRAWN;
            case WATER -> AuditKind.WATER_DRAWN;
            case FALL_OFF -> AuditKind.FALL_OFF_DRAWN;
        };
    }

    private static Optional<Argument> before(Drawn drawn) {
        return area(drawn, drawn.hazard().before(), drawn.was());
    }

    private static Optional<Argument> after(Drawn drawn) {
        return area(drawn, drawn.hazard().after(), drawn.is());
    }

    private static Optional<Argument> area(Drawn drawn, Optional<Hazard> hazard, Hole hole) {
        return drawn.hazard().isNone()
                ? Optional.of(new Area(hole.green().areaSquareMetres()))
                : hazard.map(one -> new Area(one.area().getArea()));
    }
}
