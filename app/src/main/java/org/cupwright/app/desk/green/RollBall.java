package org.cupwright.app.desk.green;

import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.Surface;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Edge;
import org.cupwright.roll.Roll;
import org.cupwright.units.Heading;

/** Rolls one ball on a green. */
public record RollBall(Session session) {
    /**
     * Rolls the ball to its end.
     *
     * @param from where the ball starts, on the green
     * @param heading its direction on the map
     * @param launchMetresPerSecond its speed along the ground
     */
    public Roll roll(
            DayQuestion question, String holeId, MapPoint from, Heading heading, double launchMetresPerSecond) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            Hole hole = HoleChoice.hole(day.course(), holeId);
            SpotOnGreen.onGreen(hole, from, "from");
            Green green = MeasuredGreen.of(stores, day.course().id(), hole).green(day.policy());
            Surface surface = green.ground().surface().orElseThrow(() -> noSurvey(hole));
            return new BallRoller(surface, day.fastest(), Edge.of(hole.green()))
                    .roll(from, heading, launchMetresPerSecond);
        });
    }

    private static Problem noSurvey(Hole hole) {
        return Problem.of("noSurvey", "hole", hole.id(), new Name(hole.id()));
    }
}
