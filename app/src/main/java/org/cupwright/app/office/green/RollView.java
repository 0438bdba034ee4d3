package org.cupwright.app.office.green;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.green.RollBall;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.roll.Roll;
import org.cupwright.roll.RollEnd;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;

/** A ball that is rolled from the asked spot. */
record RollView(Visit visit, ShowHole.Answer stands, JudgedGreen green, AskedOfGreen wanted) {
    private static final String TO_HOLE = "hole";

    /** As seen from the fairway, clockwise, eighths of a turn. */
    private static final List<String> WAYS =
            List.of("back", "backRight", "right", "frontRight", "front", "frontLeft", "left", "backLeft");

    private static final double EIGHTH_DEGREES = 45;

    /** Harder is no putt: our choice. */
    private static final double FARTHEST_PACES = 60;

    /**
     * A way a ball can be rolled.
     *
     * @param key as it is asked for
     * @param says in words
     */
    record Way(String key, String says, boolean chosen) {}

    /**
     * A ball that was rolled.
     *
     * @param says where it stopped, and how, sentence by sentence
     * @param path the places it rolled over
     */
    record Rolled(List<String> says, List<MapPoint> path) {}

    /** Which ways a ball can be rolled; none on greens without a survey. */
    List<Way> ways() {
        if (green.green().judgement().green().ground().surface().isEmpty()) {
            return List.of();
        }
        List<Way> ways = new ArrayList<>();
        String chosen = wanted.rolled().orElse(TO_HOLE);
        if (stands.spot().isPresent()) {
            ways.add(new Way(TO_HOLE, visit.texts().say("green.roll.toHole"), chosen.equals(TO_HOLE)));
        }
        for (String way : WAYS) {
            String says = stands.hole().lineOfPlay().isPresent()
                    ? visit.texts().say("way." + way)
                    : visit.texts().say("way.degrees", Math.round(heading(way).degrees()));
            ways.add(new Way(way, says, chosen.equals(way)));
        }
        return ways;
    }

    Optional<Rolled> rolled(Optional<MapPoint> from) {
        return from.flatMap(start -> wanted.rolled().map(way -> rolled(start, way)));
    }

    private Rolled rolled(MapPoint start, String way) {
        double pace = green.day().policy().get(PlacePolicy.PACE_METRES);
        double far = visit.unit().toMetres(wanted.farTyped());
        double farthest = Paces.toMetres(FARTHEST_PACES, pace);
        if (!(far > 0 && far <= farthest)) {
            throw Problem.of("green.far", "far", wanted.far(), new Length(farthest));
        }
        Heading heading = way.equals(TO_HOLE) ? towardsHole(start) : heading(way);
        RollBall.Traced ball = RollBall.traced(green, start, heading, far);
        Texts texts = visit.texts();
        Roll roll = ball.roll();
        List<String> says = new ArrayList<>();
        says.add(texts.say("roll." + EnumNames.lowerCamel(roll.end()), texts.number(roll.seconds(), 1)));
        if (roll.end() == RollEnd.REST) {
            String away = texts.length(roll.stop().distanceMetres(start));
            says.add(texts.say("green.roll.stops", where(roll.stop(), pace), away));
        }
        says.add(texts.say("roll.path", texts.length(roll.pathGroundMetres())));
        return new Rolled(says, ball.path());
    }

    private String where(MapPoint stop, double pace) {
        GreenPlaces places = new GreenPlaces(stands.course(), green.day().policy());
        return new PositionText(visit.texts(), pace)
                .of(places.find(stands.hole().id(), stop), stop);
    }

    private Heading towardsHole(MapPoint start) {
        return stands.spot()
                .filter(hole -> !hole.equals(start))
                .map(hole -> Heading.ofStep(hole.east() - start.east(), hole.north() - start.north()))
                .orElseThrow(() -> Problem.of(
                        "green.rollAtHole", "roll", "", new Name(stands.hole().id())));
    }

    private Heading heading(String way) {
        int eighths = WAYS.indexOf(way);
        if (eighths < 0) {
            throw Problem.of("green.way", "roll", way, new Name(way));
        }
        Heading play = stands.hole().lineOfPlay().map(LineOfPlay::atGreen).orElse(new Heading(0));
        return play.turnedClockwise(eighths * EIGHTH_DEGREES);
    }
}
