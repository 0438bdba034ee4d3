package org.cupwright.app.desk.green;

import java.util.Map;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;

/** Judges one position for a day. */
public record AssessPosition(Session session) {
    /** A position as it is on a day, and the green about it. */
    public record Answer(CourseDay day, GreenOnDay green, JudgedPosition position) {
        public Hole hole() {
            return green.hole();
        }
    }

    public Answer of(DayQuestion question, String holeId, Spot spot) {
        GreensOfDay one = AssessGreen.read(session, question, holeId);
        Hole hole = one.open().get(0).green().hole();
        MapPoint point = SpotOnGreen.of(hole, one.day().policy(), spot);
        Map<String, Judging> judged = one.judge(session.folder().cache(), Progress.unheard());
        return new Answer(
                one.day(), one.onDay(judged).get(0), judged.get(holeId).at(point));
    }
}
