package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Which holes of few spots are moved, and what is said to be the cause. */
class MovedAndWhyTest {
    private static final Candidate FRONT = at(15, 5);
    private static final Candidate MIDDLE = at(15, 15);
    private static final Candidate BACK = at(15, 25);

    private static Candidate at(double east, double north) {
        return MadeGreens.good(east, north, DifficultyClass.MEDIUM);
    }

    /** One green on which holes stand day by day; five days of rest. */
    private static ChangeRequest one(GreenWeeks green, Candidate... stands) {
        WeeksRequest request = MadeWeeks.request(stands.length, MadeWeeks.rests(5, 1), green);
        return new ChangeRequest(request, Map.of("1", stands(stands)));
    }

    private static List<Optional<Stand>> stands(Candidate... spots) {
        List<Optional<Stand>> stands = new ArrayList<>();
        for (Candidate spot : spots) {
            stands.add(Optional.of(new Stand(spot, false)));
        }
        return stands;
    }

    private static ChangedWeeks changed(ChangeRequest request) {
        return new WeeksChanger(Policy.defaults()).change(request, SearchWatch.patient());
    }

    private static GreenWeeks inArea(MapPoint about) {
        GreenWeeks green = MadeWeeks.green("1", 1, List.of(FRONT, MIDDLE, BACK));
        Area area = new Area("4", about.toPoint().buffer(3));
        GroundOnDay clear = GroundOnDay.clear(MadeWeeks.FIRST);
        return MadeWeeks.with(green, 0, new GreenDay(clear, Wishes.none().in(List.of(area))));
    }

    @Test
    void aHoleOutsideTheAreasOfItsDayIsMovedIntoThem_andStaysWhereItIsInsideOrTheyHaveNoSpot() {
        assertThat(changed(one(inArea(BACK.at()), FRONT)).changes())
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.cause()).isEqualTo(new HoleChange.OutsideArea());
                    assertThat(change.to()).contains(BACK);
                });
        assertThat(changed(one(inArea(BACK.at()), BACK)).changes()).isEmpty();
        assertThat(changed(one(inArea(new MapPoint(5, 15)), FRONT)).changes()).isEmpty();
    }

    /** Both stand where the ground about the first rests; the other is not moved, so nothing follows from it. */
    private static ChangeRequest inOnePlace() {
        return one(MadeWeeks.green("1", 2, List.of(FRONT, MIDDLE, BACK)), FRONT, FRONT);
    }

    @Test
    void besideAHoleThatIsWhereItWasTheGroundRests() {
        assertThat(changed(inOnePlace()).changes())
                .singleElement()
                .satisfies(change -> assertThat(change.cause()).isEqualTo(new HoleChange.GroundRests()));
    }

    @Test
    void onceItIsStoppedNoHoleIsMovedThatMayStay() {
        ChangedWeeks stopped = new WeeksChanger(Policy.defaults()).change(inOnePlace(), (done, all) -> false);
        assertThat(stopped.stopped()).isTrue();
        assertThat(stopped.changes()).isEmpty();
    }

    @Test
    void whoeverWatchesIsToldThatItGoesOn_neverThatItIsDone() {
        List<Long> told = new ArrayList<>();
        new WeeksChanger(Policy.defaults()).change(inOnePlace(), (done, all) -> {
            assertThat(done).isLessThan(all);
            told.add(done);
            return true;
        });
        assertThat(told).isNotEmpty().isSorted().doesNotHaveDuplicates().allMatch(done -> done > 0);
    }

    /** A column of its own, of one difficulty, so that sides and difficulty are even wherever the three holes are. */
    private static Candidate of(int green, Third third) {
        return MadeGreens.good(5 + 10.0 * green, 5 + 10.0 * third.ordinal(), DifficultyClass.values()[green]);
    }

    /** Three greens of one day that stand as they are told; the first is fixed at the back, beside its spot there. */
    private static List<String> movedWith(double change, Third... stands) {
        Map<String, List<Optional<Stand>>> stood = new HashMap<>();
        List<GreenWeeks> greens = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int number = i;
            String hole = Integer.toString(i + 1);
            List<Candidate> column =
                    Stream.of(Third.values()).map(third -> of(number, third)).toList();
            greens.add(MadeWeeks.green(hole, 1, column));
            stood.put(hole, stands(of(i, stands[i])));
        }
        Candidate there = MadeGreens.good(5.5, 25, DifficultyClass.EASIER);
        Wishes fixed = new Wishes(Optional.of(there), List.of(), false);
        greens.set(0, MadeWeeks.with(greens.get(0), 0, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST), fixed)));
        WeeksRequest request = MadeWeeks.request(1, MadeWeeks.rests(5, 1), greens.toArray(GreenWeeks[]::new));
        Policy policy = Policy.defaults().with(WeeksPolicy.WEIGHT_CHANGE, change);
        return new WeeksChanger(policy)
                .change(new ChangeRequest(request, stood), SearchWatch.patient()).changes().stream()
                        .map(moved ->
                                moved.hole() + " " + moved.cause().getClass().getSimpleName())
                        .toList();
    }

    @Test
    void whereADayComesOutLessEvenAnotherHoleEvensItOut_ifThatPays() {
        assertThat(movedWith(200, Third.FRONT, Third.MIDDLE, Third.BACK)).containsExactly("1 Fixed", "3 EvensOut");
        assertThat(movedWith(400, Third.FRONT, Third.MIDDLE, Third.BACK)).containsExactly("1 Fixed");
    }

    /** One hole lay in a wrong third, and one does. */
    @Test
    void whereADayIsAsEvenAsItWasTheOthersAreLeftAlone() {
        assertThat(movedWith(200, Third.BACK, Third.BACK, Third.BACK)).containsExactly("1 Fixed");
        assertThat(movedWith(200, Third.FRONT, Third.FRONT, Third.BACK)).containsExactly("1 Fixed");
    }
}
