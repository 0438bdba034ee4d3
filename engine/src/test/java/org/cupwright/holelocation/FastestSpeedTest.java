package org.cupwright.holelocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.cupwright.holelocation.FastestSpeed.Quickened;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/** By default drying, rolling and a second mowing add half a foot each, and a season without readings has ten feet. */
class FastestSpeedTest {
    private static double feet(FastestSpeed speed) {
        return speed.by(Policy.defaults()).feet();
    }

    private static Optional<GreenSpeed> read(double feet) {
        return Optional.of(new GreenSpeed(feet));
    }

    @Test
    void whatQuickensAGreenIsAddedToTheReading() {
        assertThat(feet(new FastestSpeed(read(9), 0, false, false))).isCloseTo(9.5, within(1e-12));
        assertThat(feet(new FastestSpeed(read(9), 0, true, false))).isCloseTo(10, within(1e-12));
        assertThat(feet(new FastestSpeed(read(9), 0, false, true))).isCloseTo(10, within(1e-12));
        assertThat(feet(new FastestSpeed(read(9), 0.25, true, true))).isCloseTo(10.75, within(1e-12));
        assertThat(feet(new FastestSpeed(read(9), -0.5, false, false))).isCloseTo(9, within(1e-12));
    }

    @Test
    void withoutAReadingTheSeasonsFigureCounts() {
        assertThat(feet(new FastestSpeed(Optional.empty(), 0, false, false))).isCloseTo(10.5, within(1e-12));
    }

    @Test
    void whatAddsNothingIsNotNamed() {
        Policy policy = Policy.defaults();
        assertThat(new FastestSpeed(read(9), 1, true, false).added(policy))
                .containsExactly(entry(Quickened.DRYING, 0.5), entry(Quickened.ROLLED, 0.5));
        assertThat(new FastestSpeed(read(9), 1, false, true).added(policy))
                .containsExactly(entry(Quickened.DRYING, 0.5), entry(Quickened.DOUBLE_CUT, 0.5));
    }
}
