package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.KindGuess;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;

/**
 * A green with what was measured on it.
 *
 * @param hole the hole
 * @param survey its points
 * @param readings slopes read with a level
 * @param drawn what people say of its ground, which is not measured
 */
public record MeasuredGreen(
        Hole hole, Optional<GreenSurvey> survey, List<LevelReading> readings, List<DrawnItem> drawn) {
    public MeasuredGreen {
        readings = List.copyOf(readings);
        drawn = List.copyOf(drawn);
    }

    public static MeasuredGreen of(Stores stores, String courseId, Hole hole) {
        return of(stores, courseId, List.of(hole)).get(0);
    }

    /** Some holes' greens; what is kept of all greens together is read once. */
    public static List<MeasuredGreen> of(Stores stores, String courseId, List<Hole> holes) {
        LevelSpots levels = stores.surveys().levels(courseId);
        DrawnOnCourse drawn = stores.drawn().of(courseId);
        return holes.stream()
                .map(hole -> new MeasuredGreen(
                        hole, stores.surveys().find(courseId, hole.id()), levels.of(hole.id()), drawn.of(hole.id())))
                .toList();
    }

    /** Some greens of a course, and the day by whose settings they are looked at. */
    public record Several(CourseDay day, List<MeasuredGreen> greens) {}

    /**
     * The greens of some holes.
     *
     * @param holes the holes; none, or "all": every hole
     */
    public static Several several(Stores stores, DayQuestion question, List<String> holes, Session session) {
        CourseDay day = CourseDay.of(stores, question, session);
        return new Several(day, of(stores, day.course().id(), HoleChoice.holes(day.course(), holes)));
    }

    /** The points of its survey, of the kind that was said or else looks likeliest. */
    public Optional<SurveyPoints> points() {
        return survey.map(surveyed -> KindGuess.withKind(surveyed.points()));
    }

    /** The same green with these readings, and no others. */
    public MeasuredGreen withReadings(List<LevelReading> others) {
        return new MeasuredGreen(hole, survey, others, drawn);
    }

    /** The same green with another survey. */
    public MeasuredGreen withSurvey(GreenSurvey other) {
        return new MeasuredGreen(hole, Optional.of(other), readings, drawn);
    }

    /** The green with its ground fitted to the survey: takes up to a second. */
    public Green green(Policy policy) {
        return new Green(hole, ground(policy), drawn);
    }

    private Ground ground(Policy policy) {
        if (survey.isEmpty()) {
            return new LevelSpotsGround(readings, policy);
        }
        try {
            return fitted(policy);
        } catch (SurveyTooThin tooThin) {
            return new LevelSpotsGround(readings, policy); // the import said so
        }
    }

    /** The ground fitted to the survey, the readings taken in; there must be a survey. */
    public SurveyedGround fitted(Policy policy) throws SurveyTooThin {
        SurveyedGround ground = SurveyedGround.fit(hole.green(), points().orElseThrow(), policy);
        return readings.isEmpty() ? ground : ground.withReadings(readings);
    }
}
