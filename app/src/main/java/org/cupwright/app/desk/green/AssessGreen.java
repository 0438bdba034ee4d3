package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.judging.GreenJudgement;

/** Judges a whole green for a day. */
public final class AssessGreen {
    private final Session session;

    public AssessGreen(Session session) {
        this.session = session;
    }

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
        OneGreen one = OneGreen.of(session, question, holeId);
        Judging judging = one.judged(session.folder().cache());
        return new Answer(one.day(), one.onDay(judging), judging.best());
    }

    /** One green on one day, read from the folder. */
    record OneGreen(CourseDay day, MeasuredGreen measured, GroundOnDay ground, Optional<MapPoint> last) {
        static OneGreen of(Session session, DayQuestion question, String holeId) {
            return session.read(stores -> {
                CourseDay day = CourseDay.of(stores, question, session);
                Hole hole = HoleChoice.hole(day.course(), holeId);
                GroundItems items = GroundFileReading.read(question.ground(), day.course());
                DayGround before = DayGround.of(stores, day);
                MeasuredGreen measured = MeasuredGreen.of(stores, day.course().id(), hole);
                return new OneGreen(day, measured, before.on(hole, items), before.last(hole.id()));
            });
        }

        Hole hole() {
            return measured.hole();
        }

        Judging judged(ResultCache cache) {
            return Judging.of(new GreenMeasuring(cache, day).of(measured), day, ground);
        }

        GreenOnDay onDay(Judging judging) {
            return new GreenOnDay(judging.green(), ground, last);
        }
    }
}
