package org.cupwright.democourse;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.check.FactCheck;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Jet;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Third;
import org.cupwright.policy.Policy;
import org.cupwright.turf.signal.CutterSignals;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.units.Paces;
import org.junit.jupiter.api.Test;

/** The invented season is one that an invented crew could have had. */
class DemoSeasonIT {
    private static final DemoCourse DEMO = new DemoCourse(1);
    private static final Course COURSE = DEMO.course();
    private static final ZoneId ZONE = COURSE.frame().zone();
    private static final List<Fact> FACTS = new DemoSeason(DEMO).facts();
    private static final Logbook BOOK = Logbook.of(FACTS);

    /** A change of the cup as it counts. */
    private record Change(LocalDate day, String hole, MapPoint at) {}

    private static LocalDate day(Fact fact) {
        return LocalDate.ofInstant(fact.happenedAt(), ZONE);
    }

    private static List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (Fact fact : BOOK.facts()) {
            if (fact.payload() instanceof CupChanged changed) {
                changes.add(new Change(day(fact), fact.hole().orElseThrow(), changed.cutAt()));
            }
        }
        return changes;
    }

    private static List<Change> changes(String hole) {
        return changes().stream().filter(change -> change.hole().equals(hole)).toList();
    }

    @Test
    void itEndsOnTheEveningBeforeTheDemosToday() {
        List<LocalDate> days = FACTS.stream().map(DemoSeasonIT::day).distinct().toList();
        assertThat(days).hasSize(120).isSorted();
        assertThat(days.get(119)).isEqualTo(DemoCourse.TODAY.minusDays(1));
        assertThat(DemoSeason.event()).isEqualTo(DemoCourse.TODAY.plusDays(21));
    }

    @Test
    void itHoldsWhatACrewWritesDown() {
        Map<String, Long> kinds = FACTS.stream()
                .collect(Collectors.groupingBy(fact -> fact.payload().kind(), TreeMap::new, Collectors.counting()));
        assertThat(kinds)
                .containsKeys(
                        "cupChanged",
                        "plugSet",
                        "plugSeen",
                        "plugTended",
                        "ballMark",
                        "ballMarksMended",
                        "groundMarked",
                        "frost",
                        "speedRead",
                        "roundsPlayed",
                        "weatherEntered",
                        "maintained",
                        "irrigated",
                        "spotCheck",
                        "stopSet",
                        "toolSharpened",
                        "somethingOdd",
                        "noteToNext")
                .containsEntry("correction", 1L);
    }

    @Test
    void nothingInItIsAskedBackAbout() {
        FactCheck check = new FactCheck(COURSE);
        assertThat(FACTS.stream().flatMap(fact -> check.check(fact).stream())).isEmpty();
        assertThat(BOOK.facts()).hasSize(FACTS.size() - 1);
    }

    @Test
    void everyGreenHasItsHoleChangedDailyFromAprilOn() {
        Map<LocalDate, Long> byDay =
                changes().stream().collect(Collectors.groupingBy(Change::day, TreeMap::new, Collectors.counting()));
        assertThat(byDay.values()).containsOnly(18L);
        assertThat(byDay.keySet().stream().filter(day -> !day.isBefore(LocalDate.of(2026, 4, 1))))
                .hasSize(80);
        assertThat(byDay.keySet().stream().filter(day -> day.isBefore(LocalDate.of(2026, 4, 1))))
                .hasSize(17);
    }

    @Test
    void holesAreCutOnGroundThatIsLevelAndOffTheEdge() {
        Jet jet = new Jet();
        for (Change change : changes()) {
            Hole hole = COURSE.find(change.hole()).orElseThrow();
            DEMO.trueSurface(hole.id()).at(change.at().east(), change.at().north(), jet);
            double slope = Math.hypot(jet.zx, jet.zy);
            double edge = hole.green().distanceToEdgeMetres(change.at());
            assertThat(hole.green().contains(change.at())).as("%s", change).isTrue();
            assertThat(edge).as("%s", change).isGreaterThanOrEqualTo(4 * Paces.STANDARD_METRES);
            assertThat(slope).as("%s", change).isLessThan(0.03);
        }
    }

    @Test
    void noHoleIsCutWhereAnEarlierOneStillRests() {
        for (Hole hole : COURSE.holes()) {
            List<Change> changes = changes(hole.id());
            for (int i = 0; i < changes.size(); i++) {
                Change now = changes.get(i);
                for (int j = i - 1; j >= 0; j--) {
                    LocalDate leftOn = changes.get(j + 1).day();
                    boolean rests = leftOn.isAfter(now.day().minusDays(14));
                    double apart = now.at().distanceMetres(changes.get(j).at());
                    assertThat(rests && apart < 2.74)
                            .as("%s after %s", now, changes.get(j))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void everyGreenIsUsedFrontMiddleAndBack() {
        for (Hole hole : COURSE.holes()) {
            GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
            Map<Third, Integer> thirds = new EnumMap<>(Third.class);
            changes(hole.id())
                    .forEach(change -> thirds.merge(frame.place(change.at()).third(), 1, Integer::sum));
            assertThat(thirds).as(hole.id()).hasSize(3);
            assertThat(thirds.values()).as(hole.id()).allMatch(times -> times >= 5);
        }
    }

    @Test
    void theHolesOfTheDoubleGreenAreTwentyPacesApart() {
        List<Change> ninth = changes("9");
        List<Change> last = changes("18");
        for (int i = 0; i < ninth.size(); i++) {
            double apart = ninth.get(i).at().distanceMetres(last.get(i).at());
            assertThat(apart).as("%s", ninth.get(i)).isGreaterThan(20 * Paces.STANDARD_METRES - 0.01);
        }
    }

    @Test
    void someHolesWereMovedAndTheSlipIsPutRight() {
        long moved = BOOK.facts().stream()
                .map(Fact::payload)
                .filter(payload -> payload instanceof CupChanged changed
                        && !changed.planned().orElseThrow().equals(changed.cutAt()))
                .count();
        assertThat(moved).isBetween(40L, 200L);
    }

    @Test
    void theSecondCutterIsFoundToRunHigh() {
        TurfState state = TurfFold.fold(TurfState.empty(ZONE), BOOK.facts());
        assertThat(CutterSignals.of(state, DemoCourse.TODAY, Policy.defaults()))
                .filteredOn(signal -> signal.kind() == TurfSignal.Kind.CHECK_STOP)
                .singleElement()
                .satisfies(signal -> {
                    assertThat(signal.about()).isEqualTo("B");
                    assertThat(signal.says().key()).isEqualTo("signal.plugsRunHigh");
                });
    }

    @Test
    void groundIsSavedOnEveryGreenUntilTheEvent() {
        List<GroundMarked> saved = BOOK.facts().stream()
                .map(Fact::payload)
                .filter(GroundMarked.class::isInstance)
                .map(GroundMarked.class::cast)
                .filter(mark -> mark.use() == GroundUse.SAVED)
                .toList();
        assertThat(saved).hasSize(18).allSatisfy(mark -> {
            assertThat(mark.from()).isEqualTo(DemoCourse.TODAY);
            assertThat(mark.until()).contains(DemoSeason.event().minusDays(1));
        });
    }

    @Test
    void someDaysOfWeatherAreMissing() {
        assertThat(RecordedWeather.of(BOOK.facts()).entered().days()).hasSizeBetween(110, 119);
    }

    @Test
    void theSeedDecidesAllOfIt() {
        assertThat(new DemoSeason(new DemoCourse(1)).facts()).isEqualTo(FACTS);
        assertThat(new DemoSeason(new DemoCourse(2)).facts()).doesNotContainAnyElementsOf(FACTS);
    }

    /**
     * The digest was taken from the first run that satisfied the tests above; it moves only when the invented season is
     * changed, or what a fact holds.
     */
    @Test
    void theSameBytesOnEveryMachine() {
        Digest digest = new Digest();
        FACTS.forEach(fact -> digest.text(fact.toString()));
        assertThat(digest.hex()).isEqualTo("adc052baf93571e24840e7cfc34ab13c2f3435f82d3aa0e27c0b5f666f3093f3");
    }
}
