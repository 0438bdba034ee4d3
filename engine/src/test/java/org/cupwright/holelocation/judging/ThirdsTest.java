package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.spot.Leave;
import org.junit.jupiter.api.Test;

class ThirdsTest {
    private static DifficultyClass rank(Thirds thirds, double meanLeave) {
        return thirds.of(new Leave(1, meanLeave, 36)).rank().orElseThrow();
    }

    @Test
    void goodGroundIsDividedIntoThreeEqualParts() {
        double[] leaves =
                IntStream.range(0, 300).mapToDouble(i -> 0.3 + 0.001 * i).toArray();
        Thirds thirds = new Thirds(leaves);
        for (DifficultyClass each : DifficultyClass.values()) {
            assertThat(IntStream.range(0, 300)
                            .filter(i -> rank(thirds, leaves[i]) == each)
                            .count())
                    .isBetween(99L, 101L);
        }
    }

    @Test
    void equalLeavesBelongTogetherToTheEasierThird() {
        Thirds thirds = new Thirds(new double[] {0.35, 0.35, 0.35, 0.35001, 0.34999, 0.6, 0.6});
        assertThat(rank(thirds, 0.35)).isEqualTo(DifficultyClass.EASIER);
        assertThat(rank(thirds, 0.35001)).isEqualTo(DifficultyClass.EASIER);
        assertThat(rank(thirds, 0.36)).isEqualTo(DifficultyClass.HARDER);
    }

    @Test
    void onGroundThatPlaysTheSameEverywhereThereIsNoClass() {
        double[] level =
                IntStream.range(0, 300).mapToDouble(i -> 0.3 + 0.00004 * i).toArray();
        assertThat(new Thirds(level).of(new Leave(1, 0.31, 36)).rank())
                .as("the middles of the outer thirds 8 mm apart")
                .isEmpty();
        double[] lively =
                IntStream.range(0, 300).mapToDouble(i -> 0.3 + 0.00006 * i).toArray();
        assertThat(rank(new Thirds(lively), 0.302)).isEqualTo(DifficultyClass.EASIER);
    }

    @Test
    void withoutGoodGroundOrLeaveThereIsNoClass() {
        assertThat(new Thirds(new double[0]).of(new Leave(1, 0.4, 36)).rank()).isEmpty();
        assertThat(new Thirds(new double[] {0.3}).of(Leave.UNKNOWN)).isEqualTo(Difficulty.unknown());
    }
}
