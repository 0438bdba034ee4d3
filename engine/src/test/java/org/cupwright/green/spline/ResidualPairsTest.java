package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Sums over pairs of dense points, on a patch of 5 × 4 m of invented ground, against all pairs one by one. */
class ResidualPairsTest {
    private static final int CLASSES = 13;
    private static final double REACH = CLASSES * ResidualPairs.CLASS_METRES;

    private final SurveyPoints points =
            new MadeSurvey(MadeSurface.gentle(Suite.seed(), 3), 0, 0, 5, 4, 60, 0.01, Suite.seed()).points();

    /** Heights off by a wave of 1.5 m and 10 mm of noise: what hangs together changes from class to class. */
    private double[] waves() {
        Random random = new Random(Suite.seed());
        double[] values = new double[points.count()];
        Arrays.setAll(
                values,
                i -> 0.01 * Math.sin(2 * Math.PI * (points.east(i) + points.north(i) / 2) / 1.5)
                        + 0.01 * random.nextGaussian());
        return values;
    }

    /** Means of products by class of distance; the number of pairs in the second row. */
    private double[][] byHand(double[] values) {
        double[][] means = new double[2][CLASSES];
        for (int i = 0; i < values.length; i++) {
            for (int j = 0; j < i; j++) {
                double apart = Math.hypot(points.east(i) - points.east(j), points.north(i) - points.north(j));
                if (apart <= REACH) {
                    int place = (int) Math.min(CLASSES - 1, apart / ResidualPairs.CLASS_METRES);
                    means[0][place] += values[i] * values[j];
                    means[1][place]++;
                }
            }
        }
        for (int place = 0; place < CLASSES; place++) {
            means[0][place] /= means[1][place];
        }
        return means;
    }

    /** To a tenth of the variance of the wave: squares of 0.1 m are coarse beside classes of 0.15 m. */
    @Test
    void theLatticeSumsAllPairsWithTheirDistanceToAPartOfAClass() {
        double[] values = waves();
        PointBasis basis = new PointBasis(KnotGrid.covering(0, 0, 5, 4, 0.5), points);
        double[] byPlace =
                Arrays.stream(basis.order).mapToDouble(point -> values[point]).toArray();
        boolean[] all = new boolean[values.length];
        Arrays.fill(all, true);
        ResidualLattice lattice = new ResidualLattice(basis, byPlace, all, CLASSES);
        double[][] byHand = byHand(values);
        for (int place = 0; place < CLASSES; place++) {
            assertThat(lattice.products[place] / lattice.counts[place])
                    .as("class %d, seed %d", place, Suite.seed())
                    .isCloseTo(byHand[0][place], within(0.1 * 0.5e-4));
        }
        assertThat(Arrays.stream(lattice.counts).sum())
                .isCloseTo(
                        Arrays.stream(byHand[1]).sum(),
                        within(0.02 * Arrays.stream(byHand[1]).sum()));
    }

    @Test
    void enoughPointsAreFoundJustWhereTheyAreCounted() {
        PointIndex index = new PointIndex(points);
        Random random = new Random(Suite.seed());
        for (int i = 0; i < 2_000; i++) {
            double east = 9 * random.nextDouble() - 2;
            double north = 8 * random.nextDouble() - 2;
            double within = 0.3 * random.nextDouble();
            assertThat(index.holds(6, east, north, within))
                    .as("%s, %s within %s, seed %d", east, north, within, Suite.seed())
                    .isEqualTo(index.countWithin(east, north, within) >= 6);
        }
    }
}
