package org.cupwright.cupchange.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.cupchange.MadeFacts.COURSE;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CrewNote.StopSet;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.DayReading.RoundsPlayed;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PlugWork;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Measure;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Where asking begins, and what is asked; by the bounds that {@link FactCheck} names. */
class FactCheckBoundsTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private static final String WHEN = "2024-05-01T05:00:00Z";

    private final FactCheck check = new FactCheck(new Course(
            COURSE,
            "Invented",
            new CourseFrame(32633, ZoneId.of("Etc/GMT-10")),
            List.of(Hole.of("7", Shapes.rectangle(0, 0, 20, 30)))));

    private List<Message> asks(Fact fact) {
        return check.check(fact);
    }

    private List<Message> asks(Payload payload) {
        return asks(on(WHEN, payload.needsHole() ? "7" : "", payload));
    }

    private List<String> keys(Payload payload) {
        return asks(payload).stream().map(Message::key).toList();
    }

    private static CupWork.SpotCheck hole(double millimetres) {
        return new CupWork.SpotCheck(OptionalDouble.of(millimetres), UNKNOWN, UNKNOWN);
    }

    private static CupWork.SpotCheck cup(double millimetres) {
        return new CupWork.SpotCheck(UNKNOWN, OptionalDouble.of(millimetres), UNKNOWN);
    }

    private static WeatherEntered weather(LocalDate day, double highest, OptionalDouble wind) {
        return new WeatherEntered(
                day, highest, 10, UNKNOWN, UNKNOWN, wind, OptionalInt.empty(), UNKNOWN, UNKNOWN, UNKNOWN, false);
    }

    @Test
    void everyPlaceOnAGreenIsLookedAtAndAMetreBeyondTheEdgeIsForgiven() {
        MapPoint off = new MapPoint(23, 15);
        Message asked = Message.of("fact.offTheGreen", new Name("7"), new Length(3));
        assertThat(asks(new CupWork.HoleMovedInPlay(off, "invented official", 2, "")))
                .containsExactly(asked);
        assertThat(asks(new CupWork.RolledByHand(off, true))).containsExactly(asked);
        assertThat(asks(new CupWork.DotPainted(off, LocalDate.of(2024, 5, 2)))).containsExactly(asked);
        assertThat(asks(new PlugWork.PlugSet(off, PlugWork.PlugFrom.EDGE, true)))
                .containsExactly(asked);
        assertThat(asks(new PlugWork.PlugSeen(off, PlugWork.PlugLook.LOW))).containsExactly(asked);
        assertThat(asks(new PlugWork.PlugTended(off, PlugWork.PlugCare.WATERED, Optional.empty())))
                .containsExactly(asked);
        assertThat(asks(new PlugWork.BallMark(off))).containsExactly(asked);
        assertThat(asks(MadeFacts.cut(21, 15))).isEmpty();
        assertThat(asks(MadeFacts.cut(15, 15))).isEmpty(); // five metres from the edge, but inside
    }

    @Test
    void measuresBetweenTheBoundsAreBelieved() {
        assertThat(asks(hole(50))).isEmpty();
        assertThat(asks(hole(300))).isEmpty();
        assertThat(asks(cup(8))).isEmpty();
        assertThat(asks(cup(100))).isEmpty();
    }

    @Test
    void whatWouldFitAsInchesIsAskedAboutAsSuch() {
        // 1.5 in are 38.1 mm, 12.25 in are 311.15 mm; 50 mm are 1.9685 in, 300 mm are 11.811 in
        assertThat(keys(hole(1.5))).containsExactly("fact.unlikelyMeasure");
        assertThat(keys(hole(2))).containsExactly("fact.inchesForMillimetres");
        assertThat(keys(hole(11.75))).containsExactly("fact.inchesForMillimetres");
        assertThat(keys(hole(12.25))).containsExactly("fact.unlikelyMeasure");
        assertThat(keys(cup(0.25))).containsExactly("fact.unlikelyMeasure"); // 6.35 mm
        // 4.25 in are 107.95 mm
        assertThat(asks(new StopSet("old one", 4.25)))
                .containsExactly(Message.of(
                        "fact.inchesForMillimetres",
                        new Translated("measure.stopDepth"),
                        new Measure(4.25, 2, "mm"),
                        new Measure(4.25, 2, "in"),
                        new Measure(4.25 * 25.4, 0, "mm")));
        assertThat(asks(hole(300.5)))
                .containsExactly(Message.of(
                        "fact.unlikelyMeasure", new Translated("measure.holeDepth"), new Measure(300.5, 1, "mm")));
        assertThat(asks(cup(101)))
                .containsExactly(Message.of(
                        "fact.unlikelyMeasure", new Translated("measure.cupDepth"), new Measure(101, 0, "mm")));
    }

    @Test
    void daysToComeAreAskedAboutByTheCoursesCalendar() {
        // ten hours ahead of UTC, so 15:00 UTC is already the second of May
        LocalDate second = LocalDate.of(2024, 5, 2);
        RoundsPlayed played = new RoundsPlayed(second, 80);
        Message toCome = Message.of("fact.dayToCome", new Day(second));
        assertThat(asks(on("2024-05-01T13:59:00Z", "", played))).containsExactly(toCome);
        assertThat(asks(on("2024-05-01T14:00:00Z", "", played))).isEmpty();
        assertThat(asks(on("2024-05-01T13:59:00Z", "", weather(second, 20, UNKNOWN))))
                .containsExactly(toCome);
    }

    @Test
    void aForecastIsAskedAboutWhenItsDayIsOver() {
        LocalDate first = LocalDate.of(2024, 5, 1);
        WeatherForecast forecast = WeatherForecast.of(weather(first, 20, UNKNOWN));
        assertThat(asks(on("2024-05-01T13:59:00Z", "", forecast))).isEmpty();
        assertThat(asks(on("2024-05-01T14:00:00Z", "", forecast)))
                .containsExactly(Message.of("fact.dayIsOver", new Day(first)));
        assertThat(asks(on("2024-04-01T05:00:00Z", "", forecast))).isEmpty();
    }

    @Test
    void weatherInOtherUnitsIsAskedAbout() {
        LocalDate day = LocalDate.of(2024, 5, 1);
        assertThat(asks(weather(day, 50, OptionalDouble.of(20)))).isEmpty();
        // (59 − 32) · 5/9 = 15
        List<Message> expected = List.of(
                Message.of("fact.fahrenheit", new Measure(59, 0, "°C"), new Measure(15, 0, "°C")),
                Message.of("fact.windy", new Measure(20.5, 1, "m/s")));
        assertThat(asks(weather(day, 59, OptionalDouble.of(20.5)))).isEqualTo(expected);
        assertThat(asks(WeatherForecast.of(weather(day, 59, OptionalDouble.of(20.5)))))
                .isEqualTo(expected);
    }

    @Test
    void clocksMayDifferByTenMinutes() {
        Instant recorded = Instant.parse(WHEN);
        assertThat(asks(recordedAt(recorded, recorded.plusSeconds(600)))).isEmpty();
        assertThat(asks(recordedAt(recorded, recorded.plusSeconds(601))))
                .containsExactly(Message.of("fact.happenedAfterRecorded"));
    }

    private static Fact recordedAt(Instant recorded, Instant happened) {
        return new Fact(
                new UUID(1, 2),
                Fact.CURRENT_VERSION,
                happened,
                recorded,
                Optional.empty(),
                "invented person",
                COURSE,
                Optional.of("7"),
                MadeFacts.cut(10, 10));
    }

    @Test
    void aFindingNamesItsFactAndTheHoleThatIsNotThere() {
        Fact fact = on(WHEN, "19", MadeFacts.cut(10, 10));
        assertThat(check.check(fact)).containsExactly(Message.of("fact.noSuchHole", new Name("19")));
    }
}
