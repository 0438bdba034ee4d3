package org.cupwright.app.desk;

import java.time.Clock;
import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.survey.items.GroundItems;
import org.cupwright.holelocation.GreenJudgement;

/** Judges a whole green for a day. */
public final class AssessGreen {
    private final DataFolder folder;
    private final Clock clock;

    public AssessGreen(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A green as it is on a day.
     *
     * @param day the day
     * @param judgement the verdicts over the green
     * @param best up to five positions to begin with
     */
    public record Answer(CourseDay day, GreenJudgement judgement, List<JudgedPosition> best) {}

    public Answer of(DayQuestion question, String holeId) {
        OneGreen one = OneGreen.of(folder, question, holeId, clock);
        Judging judging = one.judged();
        return new Answer(one.day(), judging.green(), judging.best());
    }

    /** One green on one day, read from the folder. */
    record OneGreen(CourseDay day, MeasuredGreen measured, GroundOnDay ground) {
        static OneGreen of(DataFolder folder, DayQuestion question, String holeId, Clock clock) {
            return folder.read(stores -> {
                CourseDay day = CourseDay.of(stores, question, clock);
                Hole hole = CourseChoice.hole(day.course(), holeId);
                GroundItems items = GroundFileReading.read(question.ground(), day.course());
                GroundOnDay ground = DayGround.of(stores, day).on(hole, items);
                return new OneGreen(day, MeasuredGreen.of(stores, day.course().id(), hole), ground);
            });
        }

        Hole hole() {
            return measured.hole();
        }

        Judging judged() {
            return Judging.of(measured.green(day.policy()), day, ground);
        }
    }
}
