package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Ground;
import org.cupwright.message.Problem;

/** Judges a green for a day, and one position on it where one is asked about. */
public record AssessGreen(Session session) {
    /**
     * A green as it is on a day.
     *
     * @param day the day
     * @param green the verdicts over it and what lies on it
     * @param asked the position that was asked about
     * @param slopeError of what the error of the slope there is made
     * @param best up to five positions to begin with
     */
    public record Answer(
            CourseDay day,
            GreenOnDay green,
            Optional<JudgedPosition> asked,
            Optional<SlopeError> slopeError,
            List<JudgedPosition> best) {
        public Hole hole() {
            return green.hole();
        }
    }

    /** @throws Problem when the position is not on the green */
    public Answer of(DayQuestion question, String holeId, Optional<Spot> spot) {
        GreensOfDay read = read(question, holeId);
        Optional<MapPoint> asked = spot.map(place ->
                SpotOnGreen.of(read.open().get(0).green().hole(), read.day().policy(), place));
        JudgedGreen one = judged(read);
        Ground ground = one.green().judgement().green().ground();
        Optional<SlopeError> slopeError = asked.flatMap(place -> SlopeError.at(ground, place));
        return new Answer(
                one.day(),
                one.green(),
                asked.map(one.judging()::at),
                slopeError,
                one.judging().best());
    }

    /** The green alone, to be asked about one position after another. */
    public JudgedGreen judged(DayQuestion question, String holeId) {
        return judged(read(question, holeId));
    }

    private GreensOfDay read(DayQuestion question, String holeId) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            return GreensOfDay.read(stores, day, question, List.of(HoleChoice.hole(day.course(), holeId)));
        });
    }

    private JudgedGreen judged(GreensOfDay one) {
        Map<String, Judging> judged = one.judge(session.folder().cache(), Progress.unheard());
        GreenOnDay green = one.onDay(judged).get(0);
        return new JudgedGreen(one.day(), green, judged.get(green.hole().id()));
    }
}
