package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.course.MapPoint;
import org.junit.jupiter.api.Test;

class PriceTest {
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    /** SplitMix64 (Steele, Lea and Flood 2014) from the seed 1234567; the numbers are recalled. */
    @Test
    void theDrawIsMixedAsSplitMix64Does() {
        long state = 1_234_567;
        state += GOLDEN_GAMMA;
        assertThat(Price.mix(state)).isEqualTo(6_457_827_717_110_365_317L);
        state += GOLDEN_GAMMA;
        assertThat(Price.mix(state)).isEqualTo(3_203_168_211_198_807_973L);
    }

    @Test
    void anotherSeedHoleOrPlaceIsAnotherDraw() {
        long draw = Price.draw(1, "7", new MapPoint(3, 4));
        assertThat(Price.draw(1, "7", new MapPoint(3, 4))).isEqualTo(draw).isNotNegative();
        assertThat(Price.draw(2, "7", new MapPoint(3, 4))).isNotEqualTo(draw);
        assertThat(Price.draw(1, "8", new MapPoint(3, 4))).isNotEqualTo(draw);
        assertThat(Price.draw(1, "7", new MapPoint(4, 4))).isNotEqualTo(draw);
        assertThat(Price.draw(1, "7", new MapPoint(3, 3))).isNotEqualTo(draw);
    }
}
