package org.cupwright.app.desk.green;

import java.util.List;
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
    /** Finer is not seen on a drawing of a green: our choice. */
    private static final double PATH_STEP_METRES = 0.1;

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

    /**
     * A ball rolled over a green that is judged already, with its way.
     *
     * @param roll its end
     * @param path the places it rolled over, a tenth of a metre apart or more
     */
    public record Traced(Roll roll, List<MapPoint> path) {}

    /**
     * The same on a green that is judged already, with the ball's way.
     *
     * @param levelMetres how hard: so far it would roll on level ground
     */
    public static Traced traced(JudgedGreen green, MapPoint from, Heading heading, double levelMetres) {
        Hole hole = green.hole();
        SpotOnGreen.onGreen(hole, from, "from");
        Surface surface = green.green().judgement().green().ground().surface().orElseThrow(() -> noSurvey(hole));
        BallRoller roller = new BallRoller(surface, green.day().fastest(), Edge.of(hole.green()));
        double launch = roller.launchForLevel(levelMetres);
        return new Traced(roller.roll(from, heading, launch), roller.path(from, heading, launch, PATH_STEP_METRES));
    }

    private static Problem noSurvey(Hole hole) {
        return Problem.of("noSurvey", "hole", hole.id(), new Name(hole.id()));
    }
}
