package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class WeeksPlannerTest {
    private static final WeeksPlanner PLANNER = new WeeksPlanner(Policy.defaults());
    private static final long SOME_WORK = 60_000;

    private static WeeksPlan plan(WeeksRequest request) {
        return PLANNER.plan(request, SOME_WORK, SearchWatch.patient());
    }

    private static MapPoint at(WeeksPlan plan, int day, String hole) {
        return plan.days().get(day).find(hole).orElseThrow().candidate().at();
    }

    /** Three greens with room for all, ten days, five days of rest. */
    private static WeeksRequest roomy(int days) {
        return MadeWeeks.request(
                days,
                MadeWeeks.rests(5, 7),
                IntStream.rangeClosed(1, 3)
                        .mapToObj(hole -> MadeWeeks.green(Integer.toString(hole), days, MadeWeeks.lattice(2)))
                        .toArray(GreenWeeks[]::new));
    }

    @Test
    void noHoleIsCutOnGroundThatRestsWhereThereIsRoom() {
        WeeksPlan plan = plan(roomy(10));
        for (String hole : List.of("1", "2", "3")) {
            for (int day = 0; day < 10; day++) {
                for (int later = day + 1; later <= Math.min(9, day + 5); later++) {
                    // left the next day, rests five days from then
                    assertThat(at(plan, day, hole).distanceMetres(at(plan, later, hole)))
                            .as("hole %s, days %s and %s", hole, day, later)
                            .isGreaterThanOrEqualTo(2.74);
                }
            }
        }
        assertThat(plan.holesSetAside()).isZero();
    }

    @Test
    void everyDayHasFrontMiddleAndBack() {
        for (DayPlan day : plan(roomy(10)).days()) {
            assertThat(day.thirdsOff()).isZero();
            assertThat(day.holes()).hasSize(3);
            assertThat(day.totals().thirds().first()).isEqualTo(1);
        }
    }

    @Test
    void equalRequestsHaveEqualPlans() {
        assertThat(plan(roomy(6))).isEqualTo(plan(roomy(6)));
    }

    @Test
    void whoeverStopsItHasThePlanThatWasFound() {
        AtomicInteger asked = new AtomicInteger();
        WeeksPlan stopped = PLANNER.plan(roomy(6), 10_000_000, (done, all) -> asked.incrementAndGet() < 3);
        assertThat(stopped.stopped()).isTrue();
        assertThat(stopped.days()).hasSize(6).allMatch(day -> day.holes().size() == 3);
        assertThat(stopped.work()).isLessThan(10_000_000);
        assertThat(plan(roomy(6)).stopped()).isFalse();
    }

    @Test
    void aLockedHoleIsWhereItWasLocked_andTheDaysBeforeKeepAwayFromIt() {
        Candidate locked = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);
        GreenDay day = new GreenDay(
                GroundOnDay.clear(MadeWeeks.FIRST.plusDays(4)), new Wishes(Optional.of(locked), List.of(), false));
        GreenWeeks green = MadeWeeks.with(MadeWeeks.green("1", 6, MadeWeeks.lattice(2)), 4, day);
        WeeksPlan plan = plan(MadeWeeks.request(6, MadeWeeks.rests(5, 7), green));
        assertThat(at(plan, 4, "1")).isEqualTo(new MapPoint(15, 15));
        assertThat(plan.days().get(4).holes().get(0).locked()).isTrue();
        for (int before = 0; before < 4; before++) {
            assertThat(at(plan, before, "1").distanceMetres(new MapPoint(15, 15)))
                    .isGreaterThanOrEqualTo(2.74);
        }
    }

    @Test
    void aClosedGreenHasNoHoleThatDay_andOneTheNext() {
        GreenDay closed = new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST.plusDays(1)), Wishes.greenClosed());
        GreenWeeks green = MadeWeeks.with(MadeWeeks.green("1", 3, MadeWeeks.lattice(2)), 1, closed);
        WeeksPlan plan = plan(MadeWeeks.request(3, MadeWeeks.rests(5, 7), green));
        assertThat(plan.days().get(0).holes()).hasSize(1);
        assertThat(plan.days().get(1).holes()).isEmpty();
        assertThat(plan.days().get(1).findings())
                .anyMatch(finding -> finding.key().equals("rotation.finding.closed"));
        assertThat(plan.days().get(2).holes()).hasSize(1);
    }

    /** Where nothing is to be chosen the search is over, however much work it may do. */
    @Test
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aSearchThatHasNothingToChooseComesToItsEnd() {
        List<Candidate> only = List.of(MadeGreens.good(15, 15, DifficultyClass.MEDIUM));
        // one of two fits beside the other: packed anew, the green offers one spot alone
        List<Candidate> near = List.of(only.get(0), MadeGreens.good(16, 15, DifficultyClass.MEDIUM));
        for (List<Candidate> spots : List.of(List.<Candidate>of(), only, near)) {
            WeeksPlan plan = plan(MadeWeeks.request(4, MadeWeeks.rests(5, 0), MadeWeeks.green("1", 4, spots)));
            assertThat(plan.days()).hasSize(4);
            assertThat(plan.stopped()).isFalse();
        }
    }

    @Test
    void savedAndClosedGroundIsLeftAloneOnItsDays() {
        LocalDate until = MadeWeeks.FIRST.plusDays(2);
        GreenWeeks green = MadeWeeks.green("1", 5, MadeWeeks.lattice(2));
        for (int day = 0; day < 3; day++) {
            GroundItem back = new GroundItem(
                    day == 1 ? Kind.SAVED : Kind.OUT_OF_USE,
                    new MapPoint(15, 25).toPoint().buffer(11),
                    Optional.empty(),
                    Optional.of(until));
            LocalDate date = MadeWeeks.FIRST.plusDays(day);
            green = MadeWeeks.with(green, day, new GreenDay(new GroundOnDay(date, List.of(back)), Wishes.none()));
        }
        WeeksPlan plan = plan(MadeWeeks.request(5, MadeWeeks.rests(3, 3), green));
        for (int day = 0; day < 3; day++) {
            assertThat(at(plan, day, "1").distanceMetres(new MapPoint(15, 25))).isGreaterThan(11);
        }
    }

    /** Two spots and a rest of ten days: from the third day on every hole is on resting ground, the oldest of it. */
    @Test
    void whereGroundIsShortThePlanComesOutAllTheSame_onTheOldestGroundAndSaysSo() {
        List<Candidate> spots = List.of(
                MadeGreens.good(6, 15, DifficultyClass.MEDIUM),
                MadeGreens.good(15, 15, DifficultyClass.MEDIUM),
                MadeGreens.good(24, 15, DifficultyClass.MEDIUM));
        WeeksPlan plan = plan(MadeWeeks.request(9, MadeWeeks.rests(10, 1), MadeWeeks.green("1", 9, spots)));
        assertThat(plan.holesSetAside()).isEqualTo(6);
        for (int day = 3; day < 9; day++) {
            PlannedHole hole = plan.days().get(day).holes().get(0);
            assertThat(hole.setAside()).containsExactly(RuleId.OLD_HOLE);
            assertThat(hole.candidate().at()).as("the oldest of three").isEqualTo(at(plan, day - 3, "1"));
        }
    }

    /** Only one spot is good on the last day: the days before leave it alone, though it is the best of theirs too. */
    @Test
    void groundThatALaterDayNeedsIsKeptForIt() {
        Candidate needed = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);
        List<Candidate> spots = new ArrayList<>(List.of(needed));
        for (int i = 0; i < 4; i++) {
            spots.add(MadeGreens.candidate(
                    5 + 6.5 * i, 6, org.cupwright.holelocation.Verdict.CAUTION, Optional.empty(), true, 1));
        }
        LocalDate last = MadeWeeks.FIRST.plusDays(3);
        GroundItem front = new GroundItem(
                Kind.OUT_OF_USE,
                new MapPoint(15, 5).toPoint().buffer(12).intersection(strip()),
                Optional.empty(),
                Optional.of(last));
        GreenWeeks green = MadeWeeks.with(
                MadeWeeks.green("1", 4, spots), 3, new GreenDay(new GroundOnDay(last, List.of(front)), Wishes.none()));
        WeeksPlan plan = plan(MadeWeeks.request(4, MadeWeeks.rests(10, 10), green));
        assertThat(at(plan, 3, "1")).isEqualTo(needed.at());
        assertThat(plan.holesSetAside()).isZero();
    }

    /** The front ten metres of the green. */
    private static org.locationtech.jts.geom.Geometry strip() {
        return new org.locationtech.jts.geom.GeometryFactory()
                .toGeometry(new org.locationtech.jts.geom.Envelope(0, 30, 0, 10));
    }

    @Test
    void twoHolesOnOneGreenKeepApartAndOffEachOthersOldHoles() {
        GreenWeeks one = MadeWeeks.green("9", 5, MadeWeeks.lattice(2));
        GreenWeeks other = MadeWeeks.green("18", 5, MadeWeeks.lattice(2));
        WeeksRequest request = new WeeksRequest(
                MadeWeeks.days(5),
                List.of(one, other),
                List.of(new SharedGreen("9", "18")),
                MadeWeeks.rests(3, 3),
                Set.of(),
                1);
        WeeksPlan plan = plan(request);
        for (int day = 0; day < 5; day++) {
            assertThat(at(plan, day, "9").distanceMetres(at(plan, day, "18"))).isGreaterThanOrEqualTo(18.3);
            for (int later = day + 1; later < 5; later++) {
                boolean rests =
                        ChronoUnit.DAYS.between(MadeWeeks.FIRST.plusDays(day), MadeWeeks.FIRST.plusDays(later)) <= 3;
                if (rests) {
                    assertThat(at(plan, day, "9").distanceMetres(at(plan, later, "18")))
                            .isGreaterThanOrEqualTo(2.74);
                }
            }
        }
    }

    @Test
    void aBusyDayPlaysEasier() {
        WeeksRequest usual = roomy(2);
        List<GreenWeeks> six = IntStream.rangeClosed(1, 6)
                .mapToObj(hole -> MadeWeeks.green(Integer.toString(hole), 2, allRanks()))
                .toList();
        WeeksPlan plan = plan(
                new WeeksRequest(usual.days(), six, List.of(), usual.rests(), Set.of(MadeWeeks.FIRST.plusDays(1)), 1));
        assertThat(plan.days().get(0).totals().difficulties().first()).isEqualTo(2);
        assertThat(plan.days().get(1).totals().difficulties().first()).isEqualTo(3);
    }

    private static List<Candidate> allRanks() {
        List<Candidate> spots = new ArrayList<>();
        for (DifficultyClass rank : DifficultyClass.values()) {
            for (Third third : Third.values()) {
                for (double east : new double[] {5, 15, 25}) {
                    spots.add(MadeGreens.good(east + 0.25 * rank.ordinal(), 5 + 10 * third.ordinal(), rank));
                }
            }
        }
        return spots;
    }

    @Test
    void daysOutOfOrderAreRefused() {
        List<LocalDate> backwards = List.of(MadeWeeks.FIRST.plusDays(1), MadeWeeks.FIRST);
        assertThatThrownBy(() -> new WeeksRequest(backwards, List.of(), List.of(), MadeWeeks.rests(1, 1), Set.of(), 1))
                .hasMessageContaining("in order");
    }
}
