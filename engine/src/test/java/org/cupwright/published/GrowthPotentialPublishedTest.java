package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.turf.GrassKind;
import org.cupwright.turf.growth.GrowthPotential;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Growth potential, Gelernter and Stowell, Golf Course Management, March 2005 (formula read in a later note). Values
 * follow from the formula; tolerance half a unit of the last digit.
 */
class GrowthPotentialPublishedTest {
    @ParameterizedTest
    @CsvSource({
        "COOL_SEASON, 10, .1915", "COOL_SEASON, 15, .6615", "COOL_SEASON, 20, 1", "COOL_SEASON, 25, .6615",
        "COOL_SEASON, 30, .1915", "WARM_SEASON, 20, .2909", "WARM_SEASON, 25, .6926", "WARM_SEASON, 31, 1",
        "WARM_SEASON, 35, 1"
    })
    void table(GrassKind grass, double celsius, double growth) {
        assertThat(GrowthPotential.of(grass, celsius)).isCloseTo(growth, within(0.00005));
    }

    @Test
    @DisplayName("The curves cross at 24.84 °C, at 0.679 (derived from the formula)")
    void crossing() {
        double low = 20;
        double high = 31;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            boolean coolAbove = GrowthPotential.of(GrassKind.COOL_SEASON, middle)
                    > GrowthPotential.of(GrassKind.WARM_SEASON, middle);
            low = coolAbove ? middle : low;
            high = coolAbove ? high : middle;
        }
        assertThat(low).isCloseTo(24.84, within(0.005));
        assertThat(GrowthPotential.of(GrassKind.COOL_SEASON, low)).isCloseTo(0.679, within(0.0005));
    }
}
