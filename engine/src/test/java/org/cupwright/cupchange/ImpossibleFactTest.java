package org.cupwright.cupchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CareWork.Irrigated;
import org.cupwright.cupchange.CareWork.Sprayed;
import org.cupwright.cupchange.CrewNote.LearnerSignedOff;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.CrewNote.StopSet;
import org.cupwright.cupchange.CrewNote.ToolSharpened;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.DayReading.RoundsPlayed;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.GroundNote.Frost;
import org.cupwright.cupchange.GroundNote.TemporaryGreen;
import org.cupwright.cupchange.PlugWork.BallMark;
import org.cupwright.cupchange.PlugWork.BallMarksMended;
import org.cupwright.message.Message.Translated;
import org.junit.jupiter.api.Test;

/** What can be, up to its bounds, and what can never have been, just beyond them. */
class ImpossibleFactTest {
    private static final MapPoint PLACE = new MapPoint(3, 4);
    private static final LocalDate DAY = LocalDate.of(2024, 5, 1);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private static void refused(String kind, ThrowingCallable made) {
        assertThatThrownBy(made)
                .isInstanceOfSatisfying(
                        ImpossibleFact.class,
                        impossible -> assertThat(impossible.why().key()).isEqualTo("impossible." + kind));
    }

    /** A quantity of which the bounds can be and what lies a step beyond them cannot. */
    private static void bounded(
            String kind, String quantity, double least, double greatest, double step, DoubleFunction<Object> made) {
        assertThatCode(() -> made.apply(least)).doesNotThrowAnyException();
        assertThatCode(() -> made.apply(greatest)).doesNotThrowAnyException();
        for (double beyond : List.of(least - step, greatest + step)) {
            assertThatThrownBy(() -> made.apply(beyond))
                    .as("%s %s", quantity, beyond)
                    .isInstanceOfSatisfying(ImpossibleFact.class, impossible -> {
                        assertThat(impossible.why().key()).isEqualTo("impossible." + kind);
                        assertThat(impossible.why().arguments().get(0))
                                .isEqualTo(new Translated("quantity." + quantity));
                    });
        }
    }

    private static void outside(String quantity, double least, double greatest, DoubleFunction<Object> made) {
        bounded("outside", quantity, least, greatest, 0.01, made);
    }

    private static void counted(String quantity, int greatest, DoubleFunction<Object> made) {
        bounded("count", quantity, 0, greatest, 1, made);
    }

    private static void named(String quantity, Function<String, Object> made) {
        assertThatCode(() -> made.apply("x")).doesNotThrowAnyException();
        assertThatThrownBy(() -> made.apply(" "))
                .isInstanceOfSatisfying(
                        ImpossibleFact.class,
                        impossible -> assertThat(impossible.why().arguments())
                                .isEqualTo(List.of(new Translated("quantity." + quantity))));
    }

    @Test
    void textsSaySomething() {
        named("product", text -> new Sprayed(text, Instant.EPOCH));
        named("cutter", text -> new StopSet(text, 125));
        named("cutter", ToolSharpened::new);
        named("learner", text -> new LearnerSignedOff(text, "plugs"));
        named("work", text -> new LearnerSignedOff("invented learner", text));
        named("text", text -> new SomethingOdd(Severity.NOTE, text, Optional.empty()));
        named("text", NoteToNext::new);
        named("official", text -> new HoleMovedInPlay(PLACE, text, 3, "spike marks"));
        named("person", text -> fact(text, MadeFacts.COURSE, 1));
        named("course", text -> fact("invented person", text, 1));
    }

    @Test
    void countsAreNotBelowNothingNorBeyondAllMeasure() {
        counted("groupsThrough", 200, groups -> new HoleMovedInPlay(PLACE, "official", (int) groups, "why"));
        counted("rounds", 2000, rounds -> new RoundsPlayed(DAY, (int) rounds));
        counted("ballMarks", 10_000, marks -> new BallMarksMended((int) marks));
    }

    @Test
    void measuresLieWithinTheirBounds() {
        outside("irrigation", 0, 500, Irrigated::new);
        outside("stopDepth", 0, 1000, depth -> new StopSet("cutter", depth));
        outside("radius", 0.05, 100, radius -> new Area.Around(PLACE, radius));
        outside("holeDepth", 0, 1000, depth -> new SpotCheck(OptionalDouble.of(depth), UNKNOWN, UNKNOWN));
        outside("cupDepth", 0, 1000, depth -> new SpotCheck(UNKNOWN, OptionalDouble.of(depth), UNKNOWN));
        outside("plugHeight", -100, 100, height -> new SpotCheck(UNKNOWN, UNKNOWN, OptionalDouble.of(height)));
        refused("nothingMeasured", () -> new SpotCheck(UNKNOWN, UNKNOWN, UNKNOWN));
    }

    /** Both ways give 2·a·b/(a + b): 12 and 6 ft are 8 ft on the level. */
    @Test
    void speedsAreReadOneWayOrBoth() {
        assertThat(new SpeedRead(12, OptionalDouble.of(6)).speed().feet()).isCloseTo(8, within(1e-12));
        assertThat(new SpeedRead(9, UNKNOWN).speed().feet()).isCloseTo(9, within(1e-12));
        for (double feet : List.of(0.99, 60.01)) {
            assertThatThrownBy(() -> new SpeedRead(feet, OptionalDouble.of(9)))
                    .hasMessageContaining("quantity.speedReading");
            assertThatThrownBy(() -> new SpeedRead(9, OptionalDouble.of(feet)))
                    .hasMessageContaining("quantity.speedReading");
        }
        assertThatThrownBy(() -> new SpeedRead(59, UNKNOWN)).hasMessageContaining("quantity.greenSpeed");
    }

    @Test
    void weatherIsSuchAsThereIsWhetherItWasMeasuredOrForetold() {
        outside("highestTemperature", -60, 60, celsius -> weather(celsius, -60));
        outside("lowestTemperature", -60, 60, celsius -> weather(60, celsius));
        assertThatCode(() -> weather(10, 10)).doesNotThrowAnyException();
        refused("temperatures", () -> weather(10, 10.1));
        refused("temperatures", () -> foretold(10, 10.1, 50));
        outside("highestHumidity", 0, 100, percent -> damp(percent, 0));
        outside("lowestHumidity", 0, 100, percent -> damp(100, percent));
        assertThatCode(() -> damp(60, 60)).doesNotThrowAnyException();
        refused("humidities", () -> damp(60, 60.1));
        refused("outside", () -> foretold(10, 5, 100.1));
        outside("wind", 0, 100, wind -> sky(wind, 0, 0));
        outside("rain", 0, 2000, rain -> sky(0, 0, rain));
        outside("radiation", 0, 50, megajoules -> station(OptionalDouble.of(megajoules), UNKNOWN, 20));
        outside("dewPoint", -60, 60, celsius -> station(UNKNOWN, OptionalDouble.of(celsius), 60));
        assertThatCode(() -> station(UNKNOWN, OptionalDouble.of(20), 20)).doesNotThrowAnyException();
        refused("dewPoints", () -> station(UNKNOWN, OptionalDouble.of(20.1), 20));
        bounded("outside", "sunshine", 0, 1440, 1, minutes -> sky(0, (int) minutes, 0));
    }

    @Test
    void aForecastIsTheDayAsItWillHaveBeenIfItComesSo() {
        WeatherEntered entered = sky(3, 120, 4);
        assertThat(WeatherForecast.of(entered).ifItComesSo()).isEqualTo(entered);
    }

    @Test
    void aDrawnAreaHasThreeCornersAndDoesNotCrossItself() {
        MapPoint east = new MapPoint(7, 4);
        MapPoint north = new MapPoint(3, 10);
        assertThat(new Area.Drawn(List.of(PLACE, east, north)).toGeometry().getArea())
                .isCloseTo(12, within(1e-12)); // half of 4 times 6
        refused("fewCorners", () -> new Area.Drawn(List.of(PLACE, east)));
        refused("areaCrossesItself", () -> new Area.Drawn(List.of(PLACE, new MapPoint(7, 10), east, north)));
    }

    @Test
    void aPhotoIsNamedByItsSum() {
        String sum = "0123456789abcdef".repeat(4);
        assertThat(new SomethingOdd(Severity.NOW, "odd", Optional.of(sum)).photo())
                .contains(sum);
        refused("photo", () -> new SomethingOdd(Severity.NOW, "odd", Optional.of(sum + "0")));
    }

    @Test
    void whatIsAboutAGreenNamesItsHole() {
        for (Payload payload : List.of(MadeFacts.cut(3, 4), new BallMark(PLACE), new TemporaryGreen(true), closed())) {
            assertThatThrownBy(() -> MadeFacts.on("2024-05-01T05:00:00Z", "", payload))
                    .hasMessageContaining("impossible.noHole");
        }
        assertThat(MadeFacts.on("2024-05-01T05:00:00Z", "", new Frost(true)).hole())
                .isEmpty();
        refused("version", () -> fact("invented person", MadeFacts.COURSE, 0));
    }

    @Test
    void aHoleCutElsewhereKeepsWhereItWasPlanned() {
        CupWork.CupChanged moved = MadeFacts.cut(3, 4).movedTo(new MapPoint(5, 6), FoundBy.TAPES);
        assertThat(moved.planned()).contains(PLACE);
        assertThat(moved.cutAt()).isEqualTo(new MapPoint(5, 6));
        assertThat(moved.foundBy()).isEqualTo(FoundBy.TAPES);
    }

    @Test
    void kindsAreNamedInLowerCamelCase() {
        assertThat(PayloadKinds.names(BallMark.class, RoundsPlayed.class))
                .containsExactlyInAnyOrder("ballMark", "roundsPlayed");
    }

    private static GroundNote.GroundMarked closed() {
        return new GroundNote.GroundMarked(
                GroundNote.GroundUse.CLOSED,
                new Area.Around(PLACE, 1),
                GroundNote.GroundReason.WEAR,
                DAY,
                Optional.empty());
    }

    private static Fact fact(String person, String course, int version) {
        return new Fact(
                new UUID(1, 2),
                version,
                Instant.EPOCH,
                Instant.EPOCH,
                Optional.empty(),
                person,
                course,
                Optional.of("7"),
                new Irrigated(1));
    }

    private static WeatherEntered weather(double highest, double lowest) {
        return new WeatherEntered(
                DAY, highest, lowest, UNKNOWN, UNKNOWN, UNKNOWN, OptionalInt.empty(), UNKNOWN, UNKNOWN, UNKNOWN, false);
    }

    private static WeatherForecast foretold(double highest, double lowest, double wind) {
        OptionalDouble blows = OptionalDouble.of(wind);
        return new WeatherForecast(
                DAY, highest, lowest, UNKNOWN, UNKNOWN, blows, OptionalInt.empty(), UNKNOWN, UNKNOWN, UNKNOWN);
    }

    private static WeatherEntered damp(double highest, double lowest) {
        OptionalDouble most = OptionalDouble.of(highest);
        OptionalDouble least = OptionalDouble.of(lowest);
        return new WeatherEntered(
                DAY, 20, 10, most, least, UNKNOWN, OptionalInt.empty(), UNKNOWN, UNKNOWN, UNKNOWN, false);
    }

    private static WeatherEntered sky(double wind, int sunshineMinutes, double rain) {
        return new WeatherEntered(
                DAY,
                20,
                10,
                UNKNOWN,
                UNKNOWN,
                OptionalDouble.of(wind),
                OptionalInt.of(sunshineMinutes),
                OptionalDouble.of(9.5),
                UNKNOWN,
                OptionalDouble.of(rain),
                false);
    }

    private static WeatherEntered station(OptionalDouble megajoules, OptionalDouble dewPoint, double highest) {
        OptionalInt sun = OptionalInt.empty();
        return new WeatherEntered(
                DAY, highest, -60, UNKNOWN, UNKNOWN, UNKNOWN, sun, megajoules, dewPoint, UNKNOWN, false);
    }
}
