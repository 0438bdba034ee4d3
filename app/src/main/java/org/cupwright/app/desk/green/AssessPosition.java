package org.cupwright.app.desk.green;

import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.AssessGreen.OneGreen;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;

/** Judges one position for a day. */
public final class AssessPosition {
    private final Session session;

    public AssessPosition(Session session) {
        this.session = session;
    }

    /** A position as it is on a day, and the green about it. */
    public record Answer(CourseDay day, GreenOnDay green, JudgedPosition position) {
        public Hole hole() {
            return green.hole();
        }
    }

    public Answer of(DayQuestion question, String holeId, Spot spot) {
        OneGreen one = OneGreen.of(session, question, holeId);
        MapPoint point = SpotOnGreen.of(one.hole(), one.day().policy(), spot);
        Judging judging = one.judged(session.folder().cache());
        return new Answer(one.day(), one.onDay(judging), judging.at(point));
    }
}
