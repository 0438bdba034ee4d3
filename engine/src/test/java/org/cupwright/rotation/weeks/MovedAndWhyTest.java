package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
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
    private static final Candidate BESIDE_BACK = at(20, 25);

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

    /** Three greens of one day that stand as they are told; the first is fixed beside the back. */
    private static List<String> movedWith(double change, Candidate... stands) {
        Map<String, List<Optional<Stand>>> stood = new HashMap<>();
        List<GreenWeeks> greens = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            String hole = Integer.toString(i + 1);
            greens.add(MadeWeeks.green(hole, 1, List.of(FRONT, MIDDLE, BACK)));
            stood.put(hole, stands(stands[i]));
        }
        Wishes fixed = new Wishes(Optional.of(BESIDE_BACK), List.of(), false);
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
        assertThat(movedWith(200, FRONT, MIDDLE, BACK)).containsExactly("1 Fixed", "3 EvensOut");
        assertThat(movedWith(400, FRONT, MIDDLE, BACK)).containsExactly("1 Fixed");
    }

    /** Uneven it was before. */
    @Test
    void whereADayIsAsEvenAsItWasTheOthersAreLeftAlone() {
        assertThat(movedWith(200, BACK, BACK, BACK)).containsExactly("1 Fixed");
    }
}
