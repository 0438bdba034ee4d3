package org.cupwright.app.desk.level;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Field;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Keeps what the level read at a spot, takes a reading back, and lists them. */
public final class KeepLevelReading {
    private final DataFolder folder;
    private final Clock clock;

    public KeepLevelReading(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    private record Read(CourseDay day, List<MeasuredGreen> greens) {}

    private Read read(DayQuestion question, List<String> holes) {
        return folder.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, clock);
            List<MeasuredGreen> greens = CourseChoice.holes(day.course(), holes).stream()
                    .map(hole -> MeasuredGreen.of(stores, day.course().id(), hole))
                    .toList();
            return new Read(day, greens);
        });
    }

    /** Keeps a reading of the day; where one lies at the same spot it takes its place. */
    public LevelReadingKept add(DayQuestion question, String holeId, Spot spot, Falls falls, String person) {
        Read read = read(question, List.of(holeId));
        CourseDay day = read.day();
        MeasuredGreen green = read.greens().get(0);
        MapPoint place = SpotOnGreen.of(green.hole(), day.policy(), spot);
        LevelReading reading = falls.at(
                        green.hole(), place, day.policy().get(GroundPolicy.READING_STANDARD_ERROR_PERCENT))
                .by(person, day.date());
        keep(day.course().id(), green.hole().id(), reading);
        Optional<LevelReading> replaced = green.readings().stream()
                .filter(other -> LevelSpots.sameSpot(other, reading))
                .findFirst();
        List<LevelReading> others = green.readings().stream()
                .filter(other -> !LevelSpots.sameSpot(other, reading))
                .toList();
        Ground before = green.withReadings(others).green(day.policy()).ground();
        Ground now = green.withReadings(LevelSpots.with(others, reading))
                .green(day.policy())
                .ground();
        return new LevelReadingKept(day, green.hole(), reading, replaced, before.planeAt(place), now.planeAt(place));
    }

    private void keep(String course, String hole, LevelReading reading) {
        LevelSpots one = new LevelSpots(Map.of(hole, List.of(reading)));
        folder.write(stores -> stores.surveys()
                .addLevels(course, stores.surveys().levels(course).with(one)));
    }

    /** A reading that was taken back. */
    public record TakenBack(CourseDay day, Hole hole, LevelReading reading) {}

    /** Takes a reading back, by its number on its green. */
    public TakenBack remove(DayQuestion question, String holeId, int number) {
        AtomicReference<TakenBack> taken = new AtomicReference<>();
        folder.write(stores -> {
            CourseDay day = CourseDay.of(stores, question, clock);
            Hole hole = CourseChoice.hole(day.course(), holeId);
            LevelSpots all = stores.surveys().levels(day.course().id());
            List<LevelReading> readings = all.of(hole.id());
            if (number < 1 || number > readings.size()) {
                throw noSuchReading(hole, number, readings.size());
            }
            LevelReading gone = readings.get(number - 1);
            stores.surveys().addLevels(day.course().id(), all.without(hole.id(), gone));
            taken.set(new TakenBack(day, hole, gone));
        });
        return taken.get();
    }

    private static Problem noSuchReading(Hole hole, int number, int count) {
        return Problem.of(
                Message.of("problem.noSuchReading", new Name(hole.id()), new Count(count)),
                Message.of("where.field", new Field("number")),
                Integer.toString(number),
                Message.of("try.noSuchReading", new Name(hole.id())));
    }

    /** The readings of some holes; none named, or "all": of every hole that has any. */
    public LevelReadingList list(DayQuestion question, List<String> holes) {
        Read read = read(question, holes);
        List<LevelReadingList.OfGreen> greens = read.greens().stream()
                .filter(green -> !green.readings().isEmpty())
                .parallel()
                .map(green -> listed(green, read.day()))
                .toList();
        return new LevelReadingList(read.day(), greens);
    }

    private static LevelReadingList.OfGreen listed(MeasuredGreen green, CourseDay day) {
        Ground ground = green.withReadings(List.of()).green(day.policy()).ground();
        return new LevelReadingList.OfGreen(
                green.hole(),
                green.readings(),
                green.readings().stream()
                        .map(reading -> ground.planeAt(reading.place()))
                        .toList());
    }
}
