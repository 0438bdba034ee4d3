package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Days without change: which share one hole, and what ends a stay. The first day is a Monday. */
class StaysTest {
    private static final Policy POLICY = Policy.defaults();

    /** By day whether the hole is changed, as {@code x..x}. */
    private static GreenWeeks green(String changes, List<Candidate> spots) {
        List<GreenDay> days = new ArrayList<>();
        for (int day = 0; day < changes.length(); day++) {
            LocalDate date = MadeWeeks.FIRST.plusDays(day);
            days.add(new GreenDay(GroundOnDay.clear(date), Wishes.none(), changes.charAt(day) == 'x'));
        }
        return new GreenWeeks("1", spots, List.of(), Optional.empty(), days);
    }

    private static GreenWeeks with(GreenWeeks green, int day, GroundItem item) {
        GroundOnDay ground = new GroundOnDay(MadeWeeks.FIRST.plusDays(day), List.of(item));
        return MadeWeeks.with(
                green,
                day,
                new GreenDay(ground, Wishes.none(), green.days().get(day).changes()));
    }

    private static GroundItem closed(double east, double north, double metres, int day) {
        MapPoint at = new MapPoint(east, north);
        Optional<LocalDate> only = Optional.of(MadeWeeks.FIRST.plusDays(day));
        return new GroundItem(Kind.OUT_OF_USE, at.toPoint().buffer(metres), Optional.empty(), only);
    }

    private static List<Integer> begins(GreenWeeks green, Policy policy) {
        int days = green.days().size();
        Stays stays = new WeeksModel(MadeWeeks.request(days, MadeWeeks.rests(14, 7), green), policy)
                .table(0)
                .stays();
        return IntStream.range(0, days).map(stays::begin).boxed().toList();
    }

    private static List<DayPlan> plan(GreenWeeks... greens) {
        int days = greens[0].days().size();
        return new WeeksPlanner(POLICY)
                .plan(MadeWeeks.request(days, MadeWeeks.rests(14, 7), greens), SearchWatch.patient())
                .days();
    }

    @Test
    void aHoleStaysUntilTheNextChangeDay() {
        assertThat(begins(green("x.x.x..", MadeWeeks.lattice(4)), POLICY)).containsExactly(0, 0, 2, 2, 4, 4, 4);
        List<DayPlan> plan = plan(green("x.x.x..", MadeWeeks.lattice(4)));
        List<PlannedHole> holes = plan.stream().map(day -> day.holes().get(0)).toList();
        assertThat(holes.stream().map(hole -> hole.candidate().at()).distinct()).hasSize(3);
        assertThat(holes.get(1).candidate().at())
                .isEqualTo(holes.get(0).candidate().at());
        assertThat(holes.get(6).since()).contains(MadeWeeks.FIRST.plusDays(4));
        assertThat(holes.get(4).since()).isEmpty();
        assertThat(holes.get(5).reasons().get(0).key()).isEqualTo("rotation.reason.stays");
    }

    @Test
    void groundThatWillBeClosedIsNotTakenTheDayBefore_andWhereAllOfItIsTheHoleIsChanged() {
        List<Candidate> two =
                List.of(MadeGreens.good(5, 5, DifficultyClass.EASIER), MadeGreens.good(25, 25, DifficultyClass.EASIER));
        GreenWeeks later = with(green("x..", two), 2, closed(5, 5, 3, 2));
        assertThat(begins(later, POLICY)).containsExactly(0, 0, 0);
        assertThat(plan(later).get(0).holes().get(0).candidate().at()).isEqualTo(new MapPoint(25, 25));
        List<Candidate> one = List.of(MadeGreens.good(5, 5, DifficultyClass.EASIER));
        assertThat(begins(with(green("x..", one), 1, closed(5, 5, 3, 1)), POLICY))
                .containsExactly(0, 1, 2);
    }

    @Test
    void groundThatIsRuledOutLaterIsNotTakenTheDayBefore() {
        List<Candidate> two =
                List.of(MadeGreens.good(5, 5, DifficultyClass.EASIER), MadeGreens.good(25, 25, DifficultyClass.EASIER));
        GreenWeeks green = green("x..", two);
        Wishes off = new Wishes(Optional.empty(), List.of(new Wishes.Circle(new MapPoint(5, 5), 1)), false);
        GroundOnDay clear = GroundOnDay.clear(MadeWeeks.FIRST.plusDays(2));
        GreenWeeks later = MadeWeeks.with(green, 2, new GreenDay(clear, off, false));
        assertThat(begins(later, POLICY)).containsExactly(0, 0, 0);
        GreenTable table = new WeeksModel(MadeWeeks.request(3, MadeWeeks.rests(14, 7), later), POLICY).table(0);
        assertThat(table.offered(0)).containsExactly(table.numberOf(new MapPoint(25, 25)));
    }

    @Test
    void aHoleIsNotKeptLongerThanTheCourseWants() {
        Policy three = POLICY.with(SchemePolicy.HOLE_MOST_DAYS, 3);
        assertThat(begins(green("x.......", MadeWeeks.lattice(4)), three)).containsExactly(0, 0, 0, 3, 3, 3, 6, 6);
    }

    @Test
    void aSpotThatSomebodyAskedForIsCutOnThatDay() {
        GreenWeeks green = green("x...", MadeWeeks.lattice(4));
        Candidate wanted = MadeGreens.good(11.5, 9.5, DifficultyClass.EASIER);
        Wishes here = new Wishes(Optional.of(wanted), List.of(), false);
        GroundOnDay clear = GroundOnDay.clear(MadeWeeks.FIRST.plusDays(2));
        GreenWeeks asked = MadeWeeks.with(green, 2, new GreenDay(clear, here, true));
        assertThat(begins(asked, POLICY)).containsExactly(0, 0, 2, 2);
        assertThat(plan(asked).get(3).holes().get(0).candidate().at()).isEqualTo(wanted.at());
    }

    /** Cut on a Saturday, it is as old as it is, and its ground rests from the day on which it is left. */
    @Test
    void theHoleInUseStaysFromBeforeThePlan_andItsGroundRestsFromWhenItIsLeft() {
        MapPoint at = new MapPoint(12, 12);
        LocalDate saturday = MadeWeeks.FIRST.minusDays(2);
        GreenWeeks made = green("..x............", MadeWeeks.lattice(4));
        Wishes there = new Wishes(
                Optional.of(MadeGreens.good(at.east(), at.north(), DifficultyClass.MEDIUM)), List.of(), false);
        List<GreenDay> days = new ArrayList<>(made.days());
        days.set(0, new GreenDay(days.get(0).ground(), there, false));
        GreenWeeks green = new GreenWeeks(
                "1", made.candidates(), List.of(new PastHole(at, saturday, Optional.empty())), Optional.empty(), days);
        PlannedHole monday = plan(green).get(0).holes().get(0);
        assertThat(monday.candidate().at()).isEqualTo(at);
        assertThat(monday.since()).contains(saturday);
        WeeksRequest request = MadeWeeks.request(15, MadeWeeks.rests(5, 2), green);
        Stays stays = new WeeksModel(request, POLICY).table(0).stays();
        assertThat(stays.leftOn(0)).isEqualTo(MadeWeeks.FIRST.plusDays(2));
        // Left on Wednesday, it rests five days, Wednesday to Sunday: day 6 of the plan is the last.
        assertThat(new WeeksModel(request, POLICY).green(0).restsUntil(0)).isEqualTo(6);
        assertThat(stays.begin(1)).isZero();
        assertThat(stays.begin(9)).isEqualTo(9); // seven days after Wednesday
    }

    /** One hole of a double green stays while the other is changed: they keep apart all the same. */
    @Test
    void ofTwoHolesOnOneGreenOneMayStay() {
        List<Candidate> spots = MadeWeeks.lattice(4);
        GreenWeeks one = green("x...", spots);
        GreenWeeks two = new GreenWeeks(
                "2", spots, List.of(), Optional.empty(), green("xxxx", spots).days());
        WeeksRequest request = new WeeksRequest(
                MadeWeeks.days(4),
                List.of(one, two),
                List.of(new SharedGreen("1", "2")),
                MadeWeeks.rests(14, 7),
                Set.of(),
                1);
        List<DayPlan> plan =
                new WeeksPlanner(POLICY).plan(request, SearchWatch.patient()).days();
        MapPoint stays = plan.get(0).holes().get(0).candidate().at();
        for (DayPlan day : plan) {
            assertThat(day.holes().get(0).candidate().at()).isEqualTo(stays);
            assertThat(day.holes().get(1).candidate().at().distanceMetres(stays))
                    .isGreaterThan(9.15);
        }
    }
}
