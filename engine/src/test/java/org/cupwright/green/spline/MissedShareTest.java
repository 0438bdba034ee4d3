package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MissedShareTest {
    /** 1 − N·E(1/T) by summing the distribution of 1/T over a fine grid up to 1/N, with N = 1. */
    private static double summed(int shape, double squares) {
        int steps = 200_000;
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double inverse = (i + 0.5) / steps;
            double weight = Math.pow(inverse, shape - 1) * Math.exp(-shape * squares * inverse);
            weights += weight;
            sum += weight * inverse;
        }
        return 1 - sum / weights;
    }

    @Test
    void theShareIsWhatTheCutGammaDistributionSays() {
        for (int shape : new int[] {MissedShare.SLOPE_SHAPE, MissedShare.BEND_SHAPE}) {
            for (double squares : new double[] {0.01, 0.3, 1, 2, 5, 12, 30}) {
                assertThat(MissedShare.of(shape, squares, 1))
                        .as("shape %d, squares %s", shape, squares)
                        .isCloseTo(summed(shape, squares), within(1e-6));
                assertThat(MissedShare.of(shape, 7 * squares, 7))
                        .isCloseTo(MissedShare.of(shape, squares, 1), within(1e-12));
            }
        }
    }

    @Test
    void withoutAnySquaresItIsFiniteAndFarAboveNoiseNearlyAll() {
        assertThat(MissedShare.of(2, 0, 1)).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(MissedShare.of(3, 1000, 1)).isCloseTo(0.999, within(1e-9));
        assertThat(MissedShare.shortfall(0, 1)).isEqualTo(1);
        assertThat(MissedShare.shortfall(0.5, 1)).isEqualTo(2);
    }
}
