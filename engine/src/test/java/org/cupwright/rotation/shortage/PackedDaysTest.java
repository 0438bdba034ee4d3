package org.cupwright.rotation.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.shortage.GroundNeed.Stage;
import org.junit.jupiter.api.Test;

/** One hole a day, from spots in a row that are all far enough apart. Worked out by hand. */
class PackedDaysTest {
    private static final int SPOTS = 5;

    private static BitSet spots(int... spots) {
        BitSet set = new BitSet();
        IntStream.of(spots).forEach(set::set);
        return set;
    }

    private static boolean found(double metresBetween, int restDays, BitSet... offered) {
        List<Stage> stages = IntStream.range(0, offered.length)
                .mapToObj(day -> new Stage("1", day, offered[day]))
                .toList();
        int[] until = IntStream.range(0, offered.length)
                .map(day -> Math.min(day + restDays, offered.length - 1))
                .toArray();
        List<MapPoint> row = IntStream.range(0, SPOTS)
                .mapToObj(i -> new MapPoint(metresBetween * i, 0))
                .toList();
        return new PackedDays(new GroundNeed(stages, until), new Packing(row, 3, Optional.empty(), 0)).found();
    }

    private static boolean found(int restDays, BitSet... offered) {
        return found(10, restDays, offered);
    }

    @Test
    void asManyDaysAsSpotsHaveOneEachAndOneMoreHasNone() {
        BitSet all = spots(0, 1, 2, 3, 4);
        assertThat(found(9, all, all, all, all, all)).isTrue();
        assertThat(found(9, all, all, all, all, all, all)).isFalse();
    }

    /** The first takes the first spot, which the second alone may have; the third moves both on. */
    @Test
    void anEarlierHoleMakesWayAndSoDoesTheOneInItsWay() {
        assertThat(found(9, spots(0, 1), spots(0))).isTrue();
        assertThat(found(9, spots(0, 1), spots(1, 2), spots(0))).isTrue();
        assertThat(found(9, spots(0, 1), spots(0, 1), spots(0, 1))).isFalse();
        assertThat(found(9, spots(0, 1, 2), spots(0, 1), spots(0, 1))).isTrue();
    }

    @Test
    void aSpotComesBackOnceItsGroundIsRested() {
        assertThat(found(1, spots(0), spots(1), spots(0), spots(1))).isTrue();
        assertThat(found(2, spots(0), spots(1), spots(0), spots(1))).isFalse();
    }

    /** Of spots four metres apart with three metres of rest all go together; two metres apart, every other one. */
    @Test
    void spotsThatAreTooNearToEachOtherDoNotBothHaveOne() {
        BitSet all = spots(0, 1, 2, 3, 4);
        assertThat(found(2, 9, all, all, all)).isTrue();
        assertThat(found(2, 9, all, all, all, all)).isFalse();
    }
}
