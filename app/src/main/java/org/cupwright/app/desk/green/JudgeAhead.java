package org.cupwright.app.desk.green;

import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;

/** Judges a day's greens before anybody asks, where what was judged is remembered; elsewhere it comes to nothing. */
public record JudgeAhead(Session session) {
    /** @throws org.cupwright.message.Problem when there is nothing to judge, or the work is to stop */
    public void day(DayQuestion question, Progress progress) {
        GreensOfDay greens =
                session.read(stores -> GreensOfDay.read(stores, CourseDay.of(stores, question, session), question));
        greens.judge(session.folder().cache(), progress);
    }
}
