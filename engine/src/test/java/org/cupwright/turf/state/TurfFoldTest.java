package org.cupwright.turf.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.cupwright.cupchange.MadeFacts.cut;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.DayReading;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.PlugWork;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.junit.jupiter.api.Test;

class TurfFoldTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private static TurfState state(Fact... facts) {
        return TurfFold.fold(TurfState.empty(ZONE), Logbook.of(List.of(facts)).facts());
    }

    private static List<Plug> plugs(TurfState state) {
        return state.green("7").plugs().plugs();
    }

    @Test
    void aChangeLeavesAnOldHoleAndAPlugInIt() {
        TurfState state = state(on("2024-05-01T04:00:00Z", "7", cut(3, 4)), on("2024-05-03T04:00:00Z", "7", cut(9, 9)));
        GreenState green = state.green("7");
        assertThat(green.cup()).contains(new CupInGround(new MapPoint(9, 9), LocalDate.of(2024, 5, 3)));
        assertThat(green.holes().old())
                .containsExactly(new OldHole(new MapPoint(3, 4), LocalDate.of(2024, 5, 1), LocalDate.of(2024, 5, 3)));
        assertThat(plugs(state)).containsExactly(Plug.set(new MapPoint(3, 4), LocalDate.of(2024, 5, 3)));
    }

    @Test
    void aHoleCutSomewhereFillsTheOneBeforeAndRestsNowhereItself() {
        CupWork.CutSomewhere somewhere = new CupWork.CutSomewhere(CupWork.Depth.BACK, Optional.of(CupWork.Across.LEFT));
        TurfState state = state(
                on("2024-05-01T04:00:00Z", "7", cut(3, 4)),
                on("2024-05-03T04:00:00Z", "7", somewhere),
                on("2024-05-06T04:00:00Z", "7", cut(9, 9)));
        assertThat(state.green("7").holes().old())
                .containsExactly(new OldHole(new MapPoint(3, 4), LocalDate.of(2024, 5, 1), LocalDate.of(2024, 5, 3)));
        assertThat(plugs(state)).containsExactly(Plug.set(new MapPoint(3, 4), LocalDate.of(2024, 5, 3)));
        assertThat(state(on("2024-05-03T04:00:00Z", "7", somewhere)).green("7").cup())
                .isEmpty();
    }

    @Test
    void daysAreTheCoursesOwnAlsoWhenTheClocksChangeAndOnLeapDays() {
        assertThat(cutDay("2024-03-30T22:59:00Z")).isEqualTo(LocalDate.of(2024, 3, 30)); // 23:59 winter time
        assertThat(cutDay("2024-03-31T21:59:00Z")).isEqualTo(LocalDate.of(2024, 3, 31)); // 23:59 summer time
        assertThat(cutDay("2024-03-31T22:01:00Z")).isEqualTo(LocalDate.of(2024, 4, 1));
        assertThat(cutDay("2024-10-27T22:59:00Z")).isEqualTo(LocalDate.of(2024, 10, 27)); // the 25-hour day's end
        assertThat(cutDay("2024-02-28T23:01:00Z")).isEqualTo(LocalDate.of(2024, 2, 29));
    }

    private static LocalDate cutDay(String when) {
        return state(on(when, "7", cut(1, 1))).green("7").cup().orElseThrow().cutOn();
    }

    @Test
    void aPlugRecordedOnItsOwnIsTheOneTheChangeLeft() {
        TurfState state = state(
                on("2024-05-01T04:00:00Z", "7", cut(3, 4)),
                on("2024-05-03T04:00:00Z", "7", cut(9, 9)),
                on(
                        "2024-05-03T04:05:00Z",
                        "7",
                        new PlugWork.PlugSet(new MapPoint(3.05, 4), PlugWork.PlugFrom.NEW_HOLE, true)));
        assertThat(plugs(state))
                .singleElement()
                .satisfies(plug -> assertThat(plug.wateredOn()).contains(LocalDate.of(2024, 5, 3)));
    }

    @Test
    void tiningStartsThePlugsAgainAndKnittingEndsThem() {
        Fact first = on("2024-05-01T04:00:00Z", "7", cut(3, 4));
        Fact second = on("2024-05-03T04:00:00Z", "7", cut(9, 9));
        Fact tined = on("2024-05-06T04:00:00Z", "", new CareWork.Maintained(CareWork.Upkeep.HOLLOW_TINED));
        Fact mown = on("2024-05-07T04:00:00Z", "7", new CareWork.Maintained(CareWork.Upkeep.MOWN_DOUBLE));
        Fact knit = on("2024-05-12T04:00:00Z", "7", new PlugWork.PlugSeen(new MapPoint(3.2, 4.2), PlugLook.KNIT));
        TurfState before = state(first, second, tined, mown);
        assertThat(plugs(before).get(0).knitsSince()).isEqualTo(LocalDate.of(2024, 5, 6));
        assertThat(before.green("7").care().lastDone())
                .containsEntry(CareWork.Upkeep.MOWN_DOUBLE, LocalDate.of(2024, 5, 7));
        assertThat(plugs(state(first, second, tined, mown, knit))).isEmpty();
    }

    @Test
    void aPlugSomebodySpeaksOfIsKnownEvenIfNobodySetIt() {
        TurfState state =
                state(on("2024-05-03T04:00:00Z", "7", new PlugWork.PlugSeen(new MapPoint(1, 1), PlugLook.DAMAGED)));
        assertThat(plugs(state))
                .singleElement()
                .satisfies(plug -> assertThat(plug.look()).contains(PlugLook.DAMAGED));
    }

    @Test
    void aPlugMovedToTheEdgeLeavesOneThere() {
        TurfState state = state(on(
                "2024-05-03T04:00:00Z",
                "7",
                new PlugWork.PlugTended(
                        new MapPoint(1, 1), PlugWork.PlugCare.MOVED_TO_EDGE, Optional.of(new MapPoint(15, 1)))));
        assertThat(plugs(state)).extracting(Plug::at).containsExactly(new MapPoint(1, 1), new MapPoint(15, 1));
    }

    @Test
    void aTemporaryGreenLeavesTheGreenInPeace() {
        TurfState state = state(
                on("2024-01-01T06:00:00Z", "7", cut(3, 4)),
                on("2024-01-02T06:00:00Z", "7", new GroundNote.TemporaryGreen(true)),
                on("2024-01-03T06:00:00Z", "7", cut(99, 99)));
        assertThat(state.green("7").cup()).isEmpty();
        assertThat(state.green("7").holes().old()).hasSize(1);
        assertThat(state.green("7").temporaryGreen()).isTrue();
    }

    @Test
    void freedGroundEndsWhatWasMarkedThereAndNoMore() {
        MapPoint centre = new MapPoint(5, 5);
        LocalDate closed = LocalDate.of(2024, 5, 1);
        LocalDate freed = LocalDate.of(2024, 5, 11);
        TurfState state = state(
                on(
                        "2024-05-01T04:00:00Z",
                        "7",
                        new GroundNote.GroundMarked(
                                GroundUse.CLOSED,
                                new Area.Around(centre, 3),
                                GroundReason.REPAIR,
                                closed,
                                Optional.empty())),
                on(
                        "2024-05-10T04:00:00Z",
                        "7",
                        new GroundNote.GroundMarked(
                                GroundUse.FREE,
                                new Area.Around(centre, 2),
                                GroundReason.OTHER,
                                freed,
                                Optional.empty())));
        List<MarkedGround> marked = state.green("7").marked();
        assertThat(marked.stream().filter(ground -> ground.countsOn(freed.minusDays(1))))
                .singleElement()
                .satisfies(ground -> assertThat(ground.place().getArea()).isGreaterThan(28));
        assertThat(marked.stream().filter(ground -> ground.countsOn(freed)))
                .singleElement()
                .satisfies(ground -> assertThat(ground.place().getArea()).isBetween(15.0, 16.0)); // the ring left
    }

    @Test
    void reentryIsTheLatestLabelOfTheGreenOrTheCourse() {
        Instant course = Instant.parse("2024-05-01T12:00:00Z");
        Instant green = Instant.parse("2024-05-01T18:00:00Z");
        TurfState state = state(
                on("2024-05-01T06:00:00Z", "", new CareWork.Sprayed("invented product", course)),
                on("2024-05-01T07:00:00Z", "7", new CareWork.Sprayed("invented product", green)));
        assertThat(state.reentryFrom("7")).contains(green);
        assertThat(state.reentryFrom("8")).contains(course);
    }

    @Test
    void roundsAndFrostAreOfTheCourseWithAHoleOrWithout() {
        LocalDate first = LocalDate.of(2024, 5, 1);
        LocalDate second = LocalDate.of(2024, 5, 2);
        TurfState state = state(
                on("2024-05-01T18:00:00Z", "", new DayReading.RoundsPlayed(first, 61)),
                on("2024-05-02T04:00:00Z", "7", new GroundNote.Frost(true)),
                on("2024-05-02T18:00:00Z", "7", new DayReading.RoundsPlayed(second, 47)));
        assertThat(state.course().rounds()).containsOnly(entry(first, 61), entry(second, 47));
        assertThat(state.course().frost()).isTrue();
        assertThat(state(
                                on("2024-05-02T04:00:00Z", "7", new GroundNote.Frost(true)),
                                on("2024-05-02T07:00:00Z", "", new GroundNote.Frost(false)))
                        .course()
                        .frost())
                .isFalse();
    }

    @Test
    void refusesFactsOutOfOrder() {
        TurfState later = state(on("2024-05-03T04:00:00Z", "7", cut(9, 9)));
        assertThatThrownBy(() -> TurfFold.fold(later, List.of(on("2024-05-01T04:00:00Z", "7", cut(3, 4)))))
                .hasMessageContaining("kept state before it");
    }

    @Test
    void forgetsHolesLongLeftButNeverTheLastFour() {
        Fact[] yearly = new Fact[8];
        for (int i = 0; i < yearly.length; i++) {
            yearly[i] = on(2010 + i + "-05-01T04:00:00Z", "7", cut(i, i));
        }
        assertThat(state(yearly).green("7").holes().old()).hasSize(HolesOnGreen.LAST_KEPT);
    }
}
