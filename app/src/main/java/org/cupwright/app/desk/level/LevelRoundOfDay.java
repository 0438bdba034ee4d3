package org.cupwright.app.desk.level;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.GreensOfDay.Open;
import org.cupwright.app.desk.green.GroundKnown;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.session.Session;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.RestsOn;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.levelround.FirstReadings;
import org.cupwright.holelocation.levelround.LevelRound;
import org.cupwright.holelocation.levelround.LevelRounds;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/** Which few spots of the greens are worth reading with the level before a day. */
public record LevelRoundOfDay(Session session) {
    /** What a round is for. */
    public enum Aim {
        /** What the day's plan needs in each third first; the open ground with what is left. */
        PLAN,
        /** As much undecided ground as can be. */
        GROUND
    }

    /**
     * The round over one green.
     *
     * @param hole the hole
     * @param restsOn what the knowledge of its ground rests on now
     * @param readings how many readings it has
     * @param round the round; without spots where nothing is left to decide
     */
    public record GreenRound(Hole hole, RestsOn restsOn, int readings, LevelRound round) {}

    /**
     * A day's rounds.
     *
     * @param day the day by whose fastest speed ground is judged
     * @param aim what they are for
     * @param greens in round order
     */
    public record Answer(CourseDay day, Aim aim, List<GreenRound> greens) {
        public Answer {
            greens = List.copyOf(greens);
        }
    }

    /**
     * Chooses the spots.
     *
     * @param question the day
     * @param holes the holes; none, or "all": every hole
     * @param aim what the round is for
     * @param spots how many readings on each green, 1 to 8
     */
    public Answer of(DayQuestion question, List<String> holes, Aim aim, int spots, Progress progress) {
        GreensOfDay greens = session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            return GreensOfDay.read(stores, day, question, HoleChoice.holes(day.course(), holes));
        });
        Wanted wanted = new Wanted(aim, spots);
        return new Answer(greens.day(), aim, rounds(greens, wanted, progress));
    }

    /** What is wanted of each green. */
    private record Wanted(Aim aim, int spots) {}

    /** All that the round over a green rests on. */
    private record Rounded(
            GroundKnown known,
            Map<String, String> policy,
            String hole,
            GreenSpeed fastest,
            boolean rain,
            GroundOnDay ground,
            Wanted wanted) {}

    /** Of several greens it is told how many are done, of one how many of its places are found. */
    private List<GreenRound> rounds(GreensOfDay greens, Wanted wanted, Progress progress) {
        if (greens.open().size() > 1) {
            return progress.sideBySide(
                    "greens", greens.open(), green -> remembered(greens, green, wanted, readings -> {}));
        }
        progress.begin("readings", wanted.spots());
        List<GreenRound> one = greens.open().stream()
                .map(green ->
                        remembered(greens, green, wanted, found -> progress.goesOn("readings", found, wanted.spots())))
                .toList();
        progress.checkStopped();
        return one;
    }

    /**
     * Works the round out unless it is remembered. Who stops is not heard within: others may wait for the same round.
     */
    private GreenRound remembered(GreensOfDay greens, Open open, Wanted wanted, IntConsumer chosen) {
        CourseDay day = greens.day();
        Rounded key = new Rounded(
                greens.known(),
                day.policy().set(),
                open.green().hole().id(),
                day.fastest(),
                day.rain().expected(),
                open.ground(),
                wanted);
        return session.folder().cache().remembered(key, () -> round(open, day, wanted, chosen));
    }

    private static GreenRound round(Open open, CourseDay day, Wanted wanted, IntConsumer chosen) {
        MeasuredGreen measured = open.green();
        Green green = measured.green(day.policy());
        int spots = wanted.spots();
        DayConditions conditions = new DayConditions(day.fastest(), day.rain().expected(), false, open.ground());
        LevelRound round = green.ground() instanceof SurveyedGround ground
                ? surveyed(new LevelRounds(green, ground, conditions, day.policy(), chosen), wanted.aim(), spots)
                : notSurveyed(new GreenJudge(green, conditions, day.policy()), measured, day.policy(), spots);
        return new GreenRound(
                measured.hole(), green.ground().restsOn(), measured.readings().size(), round);
    }

    private static LevelRound surveyed(LevelRounds rounds, Aim aim, int spots) {
        return aim == Aim.PLAN ? rounds.forPlan(spots) : rounds.forOpenGround(spots);
    }

    private static LevelRound notSurveyed(GreenJudge judge, MeasuredGreen measured, Policy policy, int spots) {
        Optional<GreenFrame> frame = GreenFrame.of(measured.hole(), policy.get(PlacePolicy.ON_CONVENTION));
        List<MapPoint> read =
                measured.readings().stream().map(LevelReading::place).toList();
        double reach = policy.get(GroundPolicy.READING_REACH_METRES);
        return new FirstReadings(judge.judgeGreen(), frame, read, reach).round(spots);
    }
}
