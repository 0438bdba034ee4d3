package org.cupwright.app.desk.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.cupwright.app.desk.MadeSession;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.TemporaryGreen;
import org.cupwright.cupchange.Payload;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.holelocation.FastestSpeed;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.turf.state.RoughHole;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What plans and logbook leave on the greens; outlines of the invented course, nothing measured. */
class DayGroundIT {
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 15);
    private static final Course COURSE = holes("3", "6");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);
    private static final MapPoint MIDDLE =
            COURSE.find("3").orElseThrow().green().centroid();

    @TempDir
    private Path path;

    private SqliteFolder folder;

    @BeforeEach
    void aCourseWithoutSurvey() {
        folder = new SqliteFolder(path, CLOCK);
        Writes.to(folder, stores -> stores.courses().add(COURSE));
    }

    private StoredPlan plan(LocalDate day) {
        return new PlanDay(MadeSession.in(folder, CLOCK), "test")
                .plan(question(day), 1, Progress.unheard())
                .plan();
    }

    private static MapPoint planned(StoredPlan plan) {
        return plan.find("3").orElseThrow().position().judgement().position();
    }

    private static DayQuestion question(LocalDate day) {
        return DayQuestion.of(day);
    }

    private void log(LocalDate day, int hour, Optional<String> hole, Payload payload) {
        Instant when =
                day.atTime(LocalTime.of(hour, 0)).atZone(COURSE.frame().zone()).toInstant();
        UUID id = UUID.nameUUIDFromBytes((when + payload.toString()).getBytes(StandardCharsets.UTF_8));
        Fact fact = new Fact(id, 1, when, when, Optional.empty(), "invented person", COURSE.id(), hole, payload);
        Writes.to(folder, stores -> stores.facts().add(fact));
    }

    private static Course holes(String... ids) {
        Course whole = new DemoCourse(1).course();
        return whole.withHoles(whole.holes().stream()
                .filter(hole -> List.of(ids).contains(hole.id()))
                .toList());
    }

    private static Hole hole(String id) {
        return COURSE.find(id).orElseThrow();
    }

    private void cut(LocalDate day, MapPoint at) {
        log(day, 6, Optional.of("3"), CupChanged.asPlanned(at));
    }

    private CourseDay day(LocalDate date) {
        return folder.read(stores -> CourseDay.of(stores, question(date), MadeSession.in(folder, CLOCK)));
    }

    private DayGround ground(LocalDate date) {
        return folder.read(
                stores -> DayGround.of(stores, CourseDay.of(stores, question(date), MadeSession.in(folder, CLOCK))));
    }

    private List<MapPoint> oldHoles(LocalDate date) {
        return ground(date).on(hole("3"), GroundItems.none()).counting(Kind.OLD_HOLE).stream()
                .map(item -> MapPoint.of(item.place().getCoordinate()))
                .toList();
    }

    @Test
    void aPlanIsTakenToHaveBeenCutWhileNobodySaysOtherwise() {
        MapPoint monday = planned(plan(MONDAY));
        assertThat(oldHoles(MONDAY)).isEmpty();
        assertThat(oldHoles(MONDAY.plusDays(1))).containsExactly(monday);
        assertThat(ground(MONDAY.plusDays(1)).last("3")).contains(monday);
        assertThat(ground(MONDAY.plusDays(1)).last("6")).isPresent();
    }

    @Test
    void whereItWasReallyCutCountsAndThePlanNoLonger() {
        plan(MONDAY);
        cut(MONDAY, MIDDLE);
        assertThat(oldHoles(MONDAY.plusDays(1))).containsExactly(MIDDLE);
    }

    @Test
    void aHoleThatWasLeftStaysWhereItWas() {
        cut(MONDAY.minusDays(1), MIDDLE);
        plan(MONDAY);
        log(MONDAY, 6, Optional.of("3"), new LeftInOldHole(Optional.empty()));
        assertThat(oldHoles(MONDAY.plusDays(1))).containsExactly(MIDDLE);
        assertThat(ground(MONDAY.plusDays(1)).last("3")).contains(MIDDLE);
    }

    @Test
    void theHolesOfADoubleGreenRestOnOneGreen() {
        Course doubleGreen = holes("9", "18");
        Writes.to(folder, stores -> stores.courses().add(doubleGreen));
        Hole last = doubleGreen.find("18").orElseThrow();
        MapPoint ninth = last.green().centroid();
        log(MONDAY, 6, Optional.of("9"), CupChanged.asPlanned(ninth));
        List<GroundItem> seenFrom18 =
                ground(MONDAY.plusDays(1)).on(last, GroundItems.none()).counting(Kind.OLD_HOLE);
        assertThat(seenFrom18)
                .singleElement()
                .satisfies(item ->
                        assertThat(MapPoint.of(item.place().getCoordinate())).isEqualTo(ninth));
        assertThat(ground(MONDAY.plusDays(1)).last("18")).isEmpty();
    }

    @Test
    void aHolePlayedToATemporaryGreenIsLeftOutUntilItsGreenIsBackInPlay() {
        cut(MONDAY.minusDays(2), MIDDLE);
        log(MONDAY.minusDays(1), 15, Optional.of("3"), new TemporaryGreen(true));
        StoredPlan monday = plan(MONDAY);
        assertThat(monday.find("3")).isEmpty();
        assertThat(monday.find("6")).isPresent();
        assertThat(monday.findings()).extracting(Message::key).contains("rotation.finding.closed");
        assertThat(oldHoles(MONDAY)).as("the ground rests all the same").containsExactly(MIDDLE);
        log(MONDAY, 15, Optional.of("3"), new TemporaryGreen(false));
        assertThat(plan(MONDAY.plusDays(1)).find("3")).isPresent();
    }

    @Test
    void whatHappenedLaterIsNotKnownYet() {
        cut(MONDAY.plusDays(3), MIDDLE);
        assertThat(oldHoles(MONDAY.plusDays(2))).isEmpty();
        assertThat(oldHoles(MONDAY.plusDays(4))).containsExactly(MIDDLE);
    }

    @Test
    void onceTheDaysHoleIsCutYesterdaysIsStillYesterdays() {
        MapPoint today = new MapPoint(MIDDLE.east() + 6, MIDDLE.north());
        cut(MONDAY, MIDDLE);
        cut(MONDAY.plusDays(1), today);
        assertThat(ground(MONDAY.plusDays(1)).last("3")).contains(MIDDLE);
        assertThat(oldHoles(MONDAY.plusDays(1))).containsExactly(MIDDLE);
        assertThat(ground(MONDAY.plusDays(2)).last("3")).contains(today);
    }

    @Test
    void anOldHoleRestsFourteenDaysFromTheDayItWasLeftAndItsPlugIsSeenForAWeek() {
        cut(MONDAY, MIDDLE);
        cut(MONDAY.plusDays(1), new MapPoint(MIDDLE.east() + 6, MIDDLE.north()));
        List<GroundItem> items =
                ground(MONDAY.plusDays(2)).on(hole("3"), GroundItems.none()).items();
        assertThat(items)
                .filteredOn(item -> item.kind() == Kind.PLUG)
                .singleElement()
                .satisfies(plug -> assertThat(plug.until()).contains(MONDAY.plusDays(7)));
        assertThat(oldHoles(MONDAY.plusDays(14))).contains(MIDDLE);
        assertThat(oldHoles(MONDAY.plusDays(15))).doesNotContain(MIDDLE);
    }

    @Test
    void theDaysSpeedIsTheLastReadingWithWhatMayComeOnTop() {
        assertThat(day(MONDAY).fastest().feet())
                .as("without a reading the policy's")
                .isEqualTo(10);
        log(MONDAY, 5, Optional.empty(), new SpeedRead(9.0, OptionalDouble.empty()));
        assertThat(day(MONDAY).fastest().feet()).as("drying").isEqualTo(9.5);
        log(MONDAY, 6, Optional.empty(), new Maintained(Upkeep.ROLLED));
        double rolled = day(MONDAY).fastest().feet();
        assertThat(rolled).isGreaterThan(9.5);
        log(MONDAY, 7, Optional.empty(), new SpeedRead(10.4, OptionalDouble.of(9.6)));
        assertThat(day(MONDAY).fastest().feet())
                .as("rolled before the reading, read both ways")
                .isCloseTo(2 * 10.4 * 9.6 / 20 + 0.5, within(1e-9));
    }

    @Test
    void aReadingIsCarriedForSomeDaysAndSaysSo() {
        log(MONDAY, 7, Optional.empty(), new SpeedRead(10.2, OptionalDouble.empty()));
        log(MONDAY, 8, Optional.empty(), new Maintained(Upkeep.ROLLED));
        assertThat(day(MONDAY).speed().from()).isEqualTo(DaySpeed.From.READ);
        DaySpeed third = day(MONDAY.plusDays(3)).speed();
        assertThat(third.from()).isEqualTo(DaySpeed.From.CARRIED);
        assertThat(third.reading().orElseThrow().day()).isEqualTo(MONDAY);
        assertThat(third.feet()).as("rolled three days before").isCloseTo(10.7, within(1e-9));
        assertThat(third.added()).containsExactly(new DaySpeed.Added(FastestSpeed.Quickened.DRYING, 0.5));
        log(MONDAY.plusDays(3), 6, Optional.empty(), new Maintained(Upkeep.ROLLED));
        assertThat(day(MONDAY.plusDays(3)).fastest().feet())
                .as("rolled on the day")
                .isCloseTo(11.2, within(1e-9));
        assertThat(day(MONDAY.plusDays(4)).speed()).isEqualTo(DaySpeed.of(10, DaySpeed.From.SEASON));
    }

    @Test
    void rainIsExpectedByTheForecastThatWasHeardLastUnlessSomebodySays() {
        assertThat(day(MONDAY).rain()).isEqualTo(DayRain.NONE);
        log(MONDAY.minusDays(2), 7, Optional.empty(), forecast(MONDAY, 12));
        assertThat(day(MONDAY).rain()).isEqualTo(DayRain.FORETOLD);
        assertThat(day(MONDAY.plusDays(1)).rain()).isEqualTo(DayRain.NONE);
        log(MONDAY, 5, Optional.empty(), forecast(MONDAY, 0.4));
        assertThat(day(MONDAY).rain()).as("too little for a puddle").isEqualTo(DayRain.NONE);
        log(MONDAY, 6, Optional.empty(), forecast(MONDAY, 3));
        assertThat(day(MONDAY).rain()).isEqualTo(DayRain.FORETOLD);
        Optional<DayRain> dry = Optional.of(DayRain.said(false));
        DayQuestion said = new DayQuestion(Optional.of(MONDAY), Optional.empty(), dry, Optional.empty());
        assertThat(folder.read(stores -> CourseDay.of(stores, said, MadeSession.in(folder, CLOCK)))
                        .rain())
                .isEqualTo(DayRain.NONE);
    }

    private static WeatherForecast forecast(LocalDate day, double rain) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new WeatherForecast(
                day, 20, 10, unknown, unknown, unknown, OptionalInt.empty(), unknown, unknown, OptionalDouble.of(rain));
    }

    @Test
    void aHoleKnownRoughlyIsBeforeTheDayAfterItUntilItIsLeft() {
        CutSomewhere back = new CutSomewhere(Depth.BACK, Optional.of(Across.CENTRE));
        log(MONDAY, 5, Optional.of("3"), CupChanged.asPlanned(MIDDLE));
        log(MONDAY.plusDays(1), 5, Optional.of("3"), back);
        assertThat(roughly(MONDAY.plusDays(1))).isEmpty();
        assertThat(roughly(MONDAY.plusDays(2))).contains(back);
        log(MONDAY.plusDays(2), 5, Optional.of("3"), CupChanged.asPlanned(MIDDLE));
        assertThat(roughly(MONDAY.plusDays(2))).as("cut already that day").contains(back);
        assertThat(folder.read(stores -> DayGround.of(stores, day(MONDAY.plusDays(2))))
                        .last("3"))
                .as("not where the hole was before that")
                .isEmpty();
        assertThat(roughly(MONDAY.plusDays(3))).isEmpty();
        assertThat(folder.read(stores -> DayGround.of(stores, day(MONDAY.plusDays(3))))
                        .last("3"))
                .contains(MIDDLE);
    }

    private Optional<CutSomewhere> roughly(LocalDate date) {
        return folder.read(stores -> DayGround.of(stores, day(date)))
                .roughly("3")
                .map(RoughHole::part);
    }

    @Test
    void aPublishedPlanIsNotMadeAnewUntilItIsWithdrawn() {
        PublishPlan publish = new PublishPlan(MadeSession.in(folder, CLOCK));
        plan(MONDAY);
        assertThat(publish.take(PublishPlan.Step.PUBLISH, Optional.of(MONDAY), false)
                        .changed())
                .isTrue();
        assertThat(publish.take(PublishPlan.Step.PUBLISH, Optional.of(MONDAY), false)
                        .changed())
                .isFalse();
        assertThatThrownBy(() -> plan(MONDAY)).isInstanceOf(Problem.class);
        publish.take(PublishPlan.Step.WITHDRAW, Optional.of(MONDAY), false);
        assertThat(plan(MONDAY).state()).isEqualTo(StoredPlan.State.DRAFT);
    }
}
