package org.cupwright.rotation.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.shortage.GroundNeed.Stage;
import org.cupwright.rotation.shortage.GroundNeed.Window;
import org.junit.jupiter.api.Test;

/** One hole a day, from spots in heaps ten metres apart: of each heap one spot at a time. Worked out by hand. */
class RestedRoomTest {
    /** So many spots were asked about, one after another. */
    private final List<Integer> asked = new ArrayList<>();

    private final ZeroOneSolver solver = (problem, mostWork) -> {
        asked.add(problem.size() / 2);
        return new ZeroOneAnswer(Outcome.OPEN, new BitSet(), 0, 0);
    };

    /** Spots 0 to 9 lie on the first heap, 10 to 19 on the second, and so on to the fifth. */
    private Packing heaps() {
        List<MapPoint> spots = IntStream.range(0, 50)
                .mapToObj(i -> new MapPoint(10 * (i / 10) + 0.1 * (i % 10), 0))
                .toList();
        return new Packing(spots, 3, Optional.of(solver), 1);
    }

    private static BitSet spots(int... spots) {
        BitSet set = new BitSet();
        IntStream.of(spots).forEach(set::set);
        return set;
    }

    private static BitSet first(int spots) {
        BitSet set = new BitSet();
        set.set(0, spots);
        return set;
    }

    /** A stage for each day, with the spots offered on it; ground rests about its hole for some days more. */
    private static GroundNeed need(int restDays, BitSet... offered) {
        List<Stage> stages = IntStream.range(0, offered.length)
                .mapToObj(day -> new Stage("1", day, offered[day]))
                .toList();
        int[] until = IntStream.range(0, offered.length)
                .map(day -> Math.min(day + restDays, offered.length - 1))
                .toArray();
        return new GroundNeed(stages, until);
    }

    private RestedRoom room(int restDays, BitSet... offered) {
        return new RestedRoom(need(restDays, offered), heaps());
    }

    /** Each day has a heap of its own. */
    private static BitSet[] ownHeaps(int days) {
        return IntStream.range(0, days).mapToObj(day -> spots(10 * day)).toArray(BitSet[]::new);
    }

    @Test
    void whereAllHaveRoomNothingIsWantedTooMuchAndNobodyIsAsked() {
        RestedRoom room = room(2, ownHeaps(5));
        assertThat(room.windows()).isEmpty();
        assertThat(room.atLeast()).isZero();
        assertThat(room.widest()).isEqualTo(new Window(0, 2, 3, false));
        assertThat(room.fit(new Window(1, 3, 3, false))).isEqualTo(3);
        assertThat(asked).isEmpty();
    }

    /** Three days at a time have one heap: two too many, and of the four days one goes without. */
    @Test
    void theDaysThatWantMostAreTakenAndOfEqualOnesTheLast() {
        RestedRoom room = room(2, first(1), first(1), first(1), first(1));
        assertThat(room.windows()).containsExactly(new Window(1, 3, 1, false));
        assertThat(room.atLeast()).isEqualTo(2);
    }

    @Test
    void daysWithoutOneInCommonAddUp() {
        RestedRoom room = room(1, first(1), first(1), first(1), first(1), first(1), first(1), first(1));
        assertThat(room.windows())
                .containsExactly(new Window(1, 2, 1, false), new Window(3, 4, 1, false), new Window(5, 6, 1, false));
        assertThat(room.atLeast()).isEqualTo(3);
    }

    /** Two days have one heap, the next two another; three days may be one window, and two windows lack more. */
    @Test
    void whatLacksLaterIsAddedToWhatLacksBefore() {
        RestedRoom room = room(2, spots(0), spots(0), spots(10), spots(10));
        assertThat(room.windows()).containsExactly(new Window(0, 1, 1, false), new Window(2, 3, 1, false));
        assertThat(room.atLeast()).isEqualTo(2);
    }

    /** A day before and a day after have heaps of their own: they add nothing, and are left out. */
    @Test
    void daysThatWantNothingTooMuchAreInNoWindow() {
        RestedRoom room = room(3, spots(10), first(1), first(1), spots(20));
        assertThat(room.windows()).containsExactly(new Window(1, 2, 1, false));
        assertThat(room.widest()).isEqualTo(new Window(0, 3, 3, false));
    }

    /** On the third and fourth day one heap, before them heaps of their own. */
    @Test
    void theWidestWindowIsTheOneWithLeastToSpareAndOfEqualOnesTheFirst() {
        assertThat(room(1, spots(0), spots(10), spots(20), spots(20)).widest()).isEqualTo(new Window(2, 3, 1, false));
        assertThat(room(1, first(1), first(1), first(1)).widest()).isEqualTo(new Window(0, 1, 1, false));
    }

    /** Three days that have two heaps, then three that have one: there two lack. */
    @Test
    void whereMostLacksIsTheWidest() {
        RestedRoom room = room(2, spots(0), spots(10), spots(0), spots(0), spots(0));
        assertThat(room.fit(new Window(0, 2, 2, false))).isEqualTo(2);
        assertThat(room.widest()).isEqualTo(new Window(2, 4, 1, false));
    }

    @Test
    void moreRoomThanIsWantedDoesNotCount() {
        RestedRoom room = room(1, spots(0, 10, 20), spots(0, 10, 20), first(1), first(1));
        assertThat(room.fit(new Window(0, 1, 2, false))).isEqualTo(2);
        assertThat(room.widest()).isEqualTo(new Window(2, 3, 1, false));
        assertThat(room.windows()).containsExactly(new Window(2, 3, 1, false));
    }

    /** All days have one heap, each day with a spot more: two days together have as many as the second of them. */
    @Test
    void theSolverIsAskedThreeTimesAtMostAndFirstOfTheFirstDays() {
        room(1, first(2), first(3), first(4), first(5), first(6), first(7));
        assertThat(asked).containsExactly(3, 4, 5);
    }

    /** What holds for three days holds for the last two of them. */
    @Test
    void theSolverIsAskedAboutTheWidestWindowsAlone() {
        room(2, first(3), first(2), first(1));
        assertThat(asked).containsExactly(3);
    }

    @Test
    void theSolverIsNotAskedAboutWhatSurelyFits() {
        room(1, spots(0), spots(10), spots(20), spots(20, 21), spots(30), spots(40));
        assertThat(asked).containsExactly(2);
    }

    private static MapPoint ofRing(int i, double east) {
        return new MapPoint(east + 2 * StrictMath.cos(i * 1.2566), 2 * StrictMath.sin(i * 1.2566));
    }

    /** Two such rings have room for four, counted are six; the first day has a heap of its own. */
    @Test
    void noMoreRoomIsSaidThanIsWanted() {
        List<MapPoint> rings = IntStream.range(0, 11)
                .mapToObj(i -> i == 10 ? new MapPoint(40, 0) : ofRing(i % 5, 20 * (i / 5)))
                .toList();
        Packing packing = new Packing(rings, 3, Optional.empty(), 1);
        assertThat(packing.most(first(10)).holes()).isEqualTo(6);
        RestedRoom room =
                new RestedRoom(need(4, spots(10), first(10), first(10), first(10), first(10), first(10)), packing);
        assertThat(room.widest()).isEqualTo(new Window(1, 5, 5, false));
    }

    /** Of a ring of five each is too near to its two neighbours: two go together, and counting says three. */
    private static RestedRoom ring(int days) {
        List<MapPoint> ring = IntStream.range(0, 5).mapToObj(i -> ofRing(i, 0)).toList();
        Packing packing = new Packing(
                ring, 3, Optional.of((problem, mostWork) -> new ZeroOneAnswer(Outcome.BEST, new BitSet(), 3, 3)), 1);
        packing.solve(first(5));
        BitSet[] offered = IntStream.range(0, days).mapToObj(day -> first(5)).toArray(BitSet[]::new);
        return new RestedRoom(need(days, offered), packing);
    }

    @Test
    void whatTheSolverProvesIsTakenAndSaid() {
        assertThat(ring(3).windows()).containsExactly(new Window(0, 2, 2, true));
        assertThat(ring(3).atLeast()).isEqualTo(1);
        assertThat(ring(4).atLeast()).isEqualTo(2);
    }

    @Test
    void whatSurelyFitsIsNotSaidToBeSolved() {
        assertThat(ring(2).widest()).isEqualTo(new Window(0, 1, 2, false));
    }

    /** Two holes on the first day, none on the second. */
    @Test
    void holesOfOneDayStandTogetherAndRestReachesOverDaysWithoutOne() {
        List<Stage> stages = List.of(
                new Stage("1", 0, first(1)),
                new Stage("2", 0, first(1)),
                new Stage("1", 2, first(1)),
                new Stage("1", 3, first(1)));
        GroundNeed need = new GroundNeed(stages, new int[] {2, 3, 3, 3});
        assertThat(need.lastTogether(0)).isEqualTo(2);
        assertThat(need.lastTogether(1)).isEqualTo(2);
        assertThat(need.lastTogether(2)).isEqualTo(3);
        assertThat(need.lastTogether(3)).isEqualTo(3);
        assertThat(new RestedRoom(need, heaps()).windows())
                .containsExactly(new Window(0, 1, 1, false), new Window(2, 3, 1, false));
    }
}
