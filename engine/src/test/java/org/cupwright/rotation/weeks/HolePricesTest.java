package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.junit.jupiter.api.Test;

/** What single terms cost, worked out by hand, in thousandths of a point. */
class HolePricesTest {
    private static final Policy POLICY = Policy.defaults()
            .with(RotationPolicy.WEIGHT_NEAR_YESTERDAY, 20.0)
            .with(RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY, 1.0)
            .with(RotationPolicy.WEIGHT_NO_ROOM, 30.0)
            .with(RotationPolicy.WEIGHT_LITTLE_ROOM, 5.0)
            .with(RotationPolicy.WEIGHT_CARE, 7.0)
            .with(RotationPolicy.WEIGHT_SAME_THIRD, 9.0)
            .with(RotationPolicy.WEIGHT_NOT_VOUCHED_FOR, 11.0)
            .with(WeeksPolicy.WEIGHT_RESTING, 500.0)
            .with(WeeksPolicy.WEIGHT_SHARED_GREEN, 20.0)
            .with(WeeksPolicy.WEIGHT_THIRDS, 300.0)
            .with(WeeksPolicy.WEIGHT_CHANGE, 400.0);

    private final HolePrices prices = new HolePrices(POLICY, new Aims(POLICY, false));

    /** Five metres at least, ten are enough. */
    @Test
    void nearnessToYesterdaysHole() {
        assertThat(prices.fromYesterday(4)).isEqualTo(20_000 + 6_000);
        assertThat(prices.fromYesterday(5)).isEqualTo(5_000);
        assertThat(prices.fromYesterday(7.5)).isEqualTo(2_500);
        assertThat(prices.fromYesterday(12)).isZero();
    }

    /** Half a pace at least, 1.83 m is enough. */
    @Test
    void roomAboutASpot() {
        assertThat(prices.room(2)).isZero();
        assertThat(prices.room(1.03)).isEqualTo(4_000);
        assertThat(prices.room(0.13)).isEqualTo(30_000 + 8_500);
        assertThat(prices.room(-3)).isEqualTo(30_000 + 9_150);
        assertThat(prices.room(Aims.ROOM_AT_LEAST_METRES)).isLessThan(30_000);
    }

    @Test
    void groundThatRestsCostsTheMoreTheLongerItStillRests() {
        assertThat(prices.resting(0, 0.5)).isEqualTo(750_000);
        assertThat(prices.resting(0.25, 0.5)).isEqualTo(875_000);
        assertThat(prices.resting(1, 0.5)).isEqualTo(1_250_000);
    }

    private static long beside(double metres, Concession... ranking) {
        Policy ranked = POLICY.with(HoleLocationPolicy.CONCESSIONS, List.of(ranking));
        return new HolePrices(ranked, new Aims(ranked, false)).resting(0, metres);
    }

    /** From 2.44 m on, and only where that is conceded before the rest of old holes, or that never is. */
    @Test
    void somewhatCloserToAnOldHoleCostsLess_ifThatIsConcededFirst() {
        assertThat(beside(2.43, Concession.values())).isEqualTo(750_000);
        assertThat(beside(2.44, Concession.values())).isEqualTo(440_000);
        assertThat(beside(2.5, Concession.OLD_HOLE_CLOSER, Concession.OLD_HOLE)).isEqualTo(410_000);
        assertThat(beside(2.5, Concession.OLD_HOLE_CLOSER)).isEqualTo(410_000);
        assertThat(beside(2.5, Concession.EDGE, Concession.OLD_HOLE_CLOSER)).isEqualTo(420_000);
        assertThat(beside(2.5, Concession.OLD_HOLE, Concession.OLD_HOLE_CLOSER)).isEqualTo(750_000);
        assertThat(beside(2.5, Concession.OLD_HOLE)).isEqualTo(750_000);
        assertThat(beside(2.5, Concession.EDGE)).isEqualTo(750_000);
    }

    /** 18.3 m are wanted, nearer than 9.15 m is as bad as resting ground. */
    @Test
    void twoHolesOnOneGreen() {
        assertThat(prices.onSharedGreen(19)).isZero();
        assertThat(prices.onSharedGreen(10)).isEqualTo(166_000);
        assertThat(prices.onSharedGreen(9.15)).isEqualTo(183_000);
        assertThat(prices.onSharedGreen(9)).isEqualTo(186_000 + 500_000);
        assertThat(prices.leastOnSharedMetres()).isEqualTo(9.15);
    }

    @Test
    void wholeHoles() {
        assertThat(prices.thirdsOff(2)).isEqualTo(600_000);
        assertThat(prices.change()).isEqualTo(400_000);
        assertThat(prices.care()).isEqualTo(7_000);
        assertThat(prices.sameThird()).isEqualTo(9_000);
        Candidate unsaid = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);
        assertThat(prices.own(unsaid)).isEqualTo(11_000);
        assertThat(prices.own(MadeGreens.said(unsaid, PersonsOpinion.Kind.GOOD)))
                .isZero();
    }
}
