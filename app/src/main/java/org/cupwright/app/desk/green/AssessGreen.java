package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.holelocation.judging.GreenJudgement;

/** Judges a whole green for a day. */
public record AssessGreen(Session session) {
    /**
     * A green as it is on a day.
     *
     * @param day the day
     * @param green the verdicts over it and what lies on it
     * @param best up to five positions to begin with
     */
    public record Answer(CourseDay day, GreenOnDay green, List<JudgedPosition> best) {
        public GreenJudgement judgement() {
            return green.judgement();
        }
    }

    public Answer of(DayQuestion question, String holeId) {
        GreensOfDay one = read(session, question, holeId);
        Map<String, Judging> judged = one.judge(session.folder().cache(), Progress.unheard());
        return new Answer(
                one.day(), one.onDay(judged).get(0), judged.get(holeId).best());
    }

    /** One green on one day, read from the folder. */
    static GreensOfDay read(Session session, DayQuestion question, String holeId) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            return GreensOfDay.read(stores, day, question, List.of(HoleChoice.hole(day.course(), holeId)));
        });
    }
}
