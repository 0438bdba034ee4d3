package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

class QuantilesTest {
    /** Few different values among them, so that many are alike. */
    private static double[] values(Random random) {
        double[] values = new double[1 + random.nextInt(40)];
        Arrays.setAll(values, i -> random.nextBoolean() ? random.nextInt(5) : random.nextGaussian());
        return values;
    }

    @Test
    void valuesStandWhereSortingPutsThem() {
        int cases = Suite.count("quantiles against sorting", 20_000, 2_000);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() + i);
            double[] values = values(random);
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int place = random.nextInt(values.length);
            int middle = sorted.length / 2;
            double median = sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
            assertThat(Quantiles.at(place, values.clone()))
                    .as("seed " + (Suite.seed() + i))
                    .isEqualTo(sorted[place]);
            assertThat(Quantiles.median(values))
                    .as("seed " + (Suite.seed() + i))
                    .isEqualTo(median);
        }
    }
}
