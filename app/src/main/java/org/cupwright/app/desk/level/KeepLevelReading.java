package org.cupwright.app.desk.level;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.LevelSpots.Called;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.agreement.RoundBought;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Keeps what the level read at a spot, takes a reading back, and lists them. */
public record KeepLevelReading(Session session) {
    /** The green as it was, and the reading that is kept now. */
    private record Added(CourseDay day, MeasuredGreen before, LevelReading reading) {}

    /**
     * A reading that is kept now.
     *
     * @param day the day on which it was handed in
     * @param hole the hole
     * @param reading the reading
     * @param replaced the reading that lay at the same spot, if one did; it counts no longer
     * @param before the slope that is known there without the reading
     * @param now the slope that is known there with it
     * @param bought what all readings of the green have bought together, where it has a survey
     */
    public record Kept(
            CourseDay day,
            Hole hole,
            LevelReading reading,
            Optional<LevelReading> replaced,
            Optional<PlaneFit> before,
            Optional<PlaneFit> now,
            Optional<RoundBought> bought) {}

    /** Keeps a reading of the day; where one lies at the same spot it takes its place. */
    public Kept add(DayQuestion question, String holeId, Spot spot, Falls falls) {
        Added added = session.decide(Right.SURVEY, stores -> added(stores, question, holeId, spot, falls));
        CourseDay day = added.day();
        MeasuredGreen green = added.before();
        LevelReading reading = added.reading();
        Optional<LevelReading> replaced = green.readings().stream()
                .filter(other -> LevelSpots.sameSpot(other, reading))
                .findFirst();
        List<LevelReading> others = green.readings().stream()
                .filter(other -> !LevelSpots.sameSpot(other, reading))
                .toList();
        List<LevelReading> all = LevelSpots.with(others, reading);
        Optional<SurveyedGround> survey = survey(green, day);
        return new Kept(
                day,
                green.hole(),
                reading,
                replaced,
                ground(green, survey, others, day).planeAt(reading.place()),
                ground(green, survey, all, day).planeAt(reading.place()),
                survey.flatMap(ground -> RoundBought.of(green.hole().green(), ground, all)));
    }

    private Added added(Stores stores, DayQuestion question, String holeId, Spot spot, Falls falls) {
        CourseDay day = CourseDay.of(stores, question, session);
        String course = day.course().id();
        Hole hole = HoleChoice.hole(day.course(), holeId);
        MeasuredGreen green = MeasuredGreen.of(stores, course, hole);
        double standardError = day.policy().get(GroundPolicy.READING_STANDARD_ERROR_PERCENT);
        LevelReading reading = falls.at(hole, SpotOnGreen.of(hole, day.policy(), spot), standardError)
                .by(session.person().name(), day.date());
        LevelSpots one = new LevelSpots(Map.of(hole.id(), List.of(reading)));
        stores.surveys().addLevels(course, stores.surveys().levels(course).with(one));
        return new Added(day, green, reading);
    }

    /** The ground of the survey alone, fitted once; empty without a survey that can be fitted. */
    private static Optional<SurveyedGround> survey(MeasuredGreen green, CourseDay day) {
        if (green.survey().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(green.withReadings(List.of()).fitted(day.policy()));
        } catch (SurveyTooThin tooThin) {
            return Optional.empty(); // the import said so
        }
    }

    private static Ground ground(
            MeasuredGreen green, Optional<SurveyedGround> survey, List<LevelReading> readings, CourseDay day) {
        return survey.<Ground>map(ground -> readings.isEmpty() ? ground : ground.withReadings(readings))
                .orElseGet(() -> new LevelSpotsGround(readings, day.policy()));
    }

    /** A reading that was taken back. */
    public record TakenBack(CourseDay day, Hole hole, LevelReading reading) {}

    /**
     * Takes a reading back.
     *
     * @param id the reading's id, or so much of its beginning that it is the only one
     * @param holes where to look; none, or "all": on every hole
     */
    public TakenBack remove(DayQuestion question, String id, List<String> holes) {
        return session.decide(Right.SURVEY, stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            LevelSpots all = stores.surveys().levels(day.course().id());
            List<String> where =
                    HoleChoice.holes(day.course(), holes).stream().map(Hole::id).toList();
            Called gone = only(id, all.find(where, id));
            stores.surveys().addLevels(day.course().id(), all.without(gone.hole(), gone.reading()));
            return new TakenBack(day, HoleChoice.hole(day.course(), gone.hole()), gone.reading());
        });
    }

    private static Called only(String id, List<Called> found) {
        if (found.isEmpty()) {
            throw Problem.of("noSuchReading", "id", id, new Name(id));
        }
        if (found.size() > 1) {
            String ids = String.join(", ", found.stream().map(Called::id).toList());
            throw Problem.of("severalReadings", "id", id, new Name(id), new Name(ids));
        }
        return found.get(0);
    }

    /** The readings of a course, of greens that have any, in round order; the ground is fitted by the day's policy. */
    public record Listed(CourseDay day, List<OfGreen> greens) {}

    /**
     * One green's readings.
     *
     * @param hole the hole
     * @param readings the oldest first
     * @param without the slope without any reading at the spot of each, where it is known
     * @param bought what they have bought together
     */
    public record OfGreen(
            Hole hole, List<LevelReading> readings, List<Optional<PlaneFit>> without, Optional<RoundBought> bought) {}

    /** The readings of some holes; none named, or "all": of every hole that has any. */
    public Listed list(DayQuestion question, List<String> holes) {
        MeasuredGreen.Several read = session.read(stores -> MeasuredGreen.several(stores, question, holes, session));
        List<OfGreen> greens = read.greens().stream()
                .filter(green -> !green.readings().isEmpty())
                .parallel()
                .map(green -> listed(green, read.day()))
                .toList();
        return new Listed(read.day(), greens);
    }

    private static OfGreen listed(MeasuredGreen green, CourseDay day) {
        Optional<SurveyedGround> survey = survey(green, day);
        Ground ground = ground(green, survey, List.of(), day);
        return new OfGreen(
                green.hole(),
                green.readings(),
                green.readings().stream()
                        .map(reading -> ground.planeAt(reading.place()))
                        .toList(),
                survey.flatMap(surveyed -> RoundBought.of(green.hole().green(), surveyed, green.readings())));
    }
}
