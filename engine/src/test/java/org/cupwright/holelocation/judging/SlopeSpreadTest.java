package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SlopeSpreadTest {
    @Test
    void ofTwentyOneSpotsTheSecondTheMiddleAndTheLastButOneAreNamed() {
        double[] falling =
                IntStream.rangeClosed(0, 20).mapToDouble(i -> 0.1 * (20 - i)).toArray();
        SlopeSpread spread = SlopeSpread.of(falling).orElseThrow();
        assertThat(spread.p5()).isCloseTo(0.1, within(1e-12));
        assertThat(spread.median()).isCloseTo(1, within(1e-12));
        assertThat(spread.p95()).isCloseTo(1.9, within(1e-12));
        assertThat(falling[0]).as("what was given stays in its order").isEqualTo(2);
    }

    @Test
    void betweenTwoSpotsItIsInterpolated() {
        SlopeSpread spread = SlopeSpread.of(new double[] {3, 1}).orElseThrow();
        assertThat(spread.p5()).isCloseTo(1.1, within(1e-12));
        assertThat(spread.median()).isCloseTo(2, within(1e-12));
        assertThat(spread.p95()).isCloseTo(2.9, within(1e-12));
    }

    @Test
    void oneSpotIsAllThereIsAndNoneIsNothing() {
        assertThat(SlopeSpread.of(new double[] {2.5})).contains(new SlopeSpread(2.5, 2.5, 2.5));
        assertThat(SlopeSpread.of(new double[0])).isEmpty();
    }
}
