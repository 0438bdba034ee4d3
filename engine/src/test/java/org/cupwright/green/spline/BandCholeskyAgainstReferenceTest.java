package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.cupwright.testing.Suite;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The banded factor and the selected inverse against dense matrices (Hipparchus), on random positive definite bands.
 */
class BandCholeskyAgainstReferenceTest {
    private static RealMatrix dense(Random random, int order, int halfBandwidth) {
        RealMatrix matrix = new Array2DRowRealMatrix(order, order);
        for (int i = 0; i < order; i++) {
            matrix.setEntry(i, i, 1.5 * halfBandwidth + 2 + random.nextDouble());
            for (int j = Math.max(0, i - halfBandwidth); j < i; j++) {
                double value = 2 * random.nextDouble() - 1;
                matrix.setEntry(i, j, value);
                matrix.setEntry(j, i, value);
            }
        }
        return matrix;
    }

    private static BandMatrix band(RealMatrix dense, int halfBandwidth) {
        BandMatrix band = new BandMatrix(dense.getRowDimension(), halfBandwidth);
        for (int i = 0; i < dense.getRowDimension(); i++) {
            for (int j = Math.max(0, i - halfBandwidth); j <= i; j++) {
                band.add(i, j, dense.getEntry(i, j));
            }
        }
        return band;
    }

    @Test
    void solutionsDeterminantsAndInversesAgreeWithDenseOnes() {
        int cases = Suite.count("bands against dense matrices", 1000, 100);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() + i);
            int order = 1 + random.nextInt(60);
            int halfBandwidth = random.nextInt(order);
            String label = "seed " + (Suite.seed() + i) + ", order " + order + ", half-bandwidth " + halfBandwidth;
            RealMatrix matrix = dense(random, order, halfBandwidth);
            CholeskyDecomposition reference = new CholeskyDecomposition(matrix);
            BandCholesky factor = new BandCholesky(band(matrix, halfBandwidth));

            assertThat(factor.logDeterminant())
                    .as(label)
                    .isCloseTo(Math.log(reference.getDeterminant()), within(1e-9 * order));
            RealVector right = new ArrayRealVector(order);
            for (int k = 0; k < order; k++) {
                right.setEntry(k, random.nextGaussian());
            }
            assertThat(Arrays.copyOf(factor.solve(padded(right)), order))
                    .as(label)
                    .containsExactly(reference.getSolver().solve(right).toArray(), within(1e-10));
            manyAgree(factor, reference, random, label);
            int wide = Math.min(order - 1, halfBandwidth + random.nextInt(20));
            inverseAgrees(
                    new SelectedInverse(factor, wide), reference.getSolver().getInverse(), wide, label);
        }
    }

    private static void manyAgree(BandCholesky factor, CholeskyDecomposition reference, Random random, String label) {
        double[][] columns = new double[factor.upper.length][1 + random.nextInt(9)];
        RealMatrix right = new Array2DRowRealMatrix(factor.upper.order, columns[0].length);
        for (int row = 0; row < factor.upper.order; row++) {
            for (int column = 0; column < columns[0].length; column++) {
                columns[row][column] = random.nextGaussian();
                right.setEntry(row, column, columns[row][column]);
            }
        }
        new ManySolutions(factor).solve(columns);
        RealMatrix solved = reference.getSolver().solve(right);
        for (int row = 0; row < factor.upper.order; row++) {
            assertThat(columns[row]).as(label).containsExactly(solved.getRow(row), within(1e-10));
        }
    }

    private static double[] padded(RealVector vector) {
        return Arrays.copyOf(vector.toArray(), (vector.getDimension() + 3) / 4 * 4);
    }

    private static void inverseAgrees(SelectedInverse inverse, RealMatrix reference, int wide, String label) {
        for (int i = 0; i < reference.getRowDimension(); i++) {
            for (int j = Math.max(0, i - wide); j <= i; j++) {
                assertThat(inverse.get(i, j))
                        .as(label + ", entry " + i + ", " + j)
                        .isCloseTo(reference.getEntry(i, j), within(1e-12));
                assertThat(inverse.get(j, i)).isEqualTo(inverse.get(i, j));
            }
        }
    }

    @Test
    void aMatrixThatIsNotPositiveDefiniteIsRefusedWithTheRow() {
        BandMatrix matrix = new BandMatrix(3, 1);
        matrix.add(0, 0, 1);
        matrix.add(1, 0, 2);
        matrix.add(1, 1, 4);
        matrix.add(2, 2, 1);

        assertThatThrownBy(() -> new BandCholesky(matrix))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("coefficient 1");
    }
}
