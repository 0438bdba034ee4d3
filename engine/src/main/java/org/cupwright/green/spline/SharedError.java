package org.cupwright.green.spline;

import java.util.Arrays;

/**
 * What several disagreements with known covariance have in common: generalised least squares of d = M·b + error.
 *
 * <p>{@link #chiSquare} is b'Cov(b)⁻¹b: chi-square with as many degrees of freedom as M has columns when nothing is
 * shared.
 *
 * @param estimate b, at most two entries
 * @param covariance of b, row by row
 */
public record SharedError(double[] estimate, double[][] covariance) {
    public SharedError {
        estimate = estimate.clone();
        covariance = new double[][] {covariance[0].clone(), covariance[covariance.length - 1].clone()};
    }

    /**
     * @param covariance of the disagreements, positive definite
     * @param shared one or two columns M, each as long as the disagreements
     */
    public static SharedError of(double[] disagreements, double[][] covariance, double[]... shared) {
        BandCholesky factor = factor(covariance);
        int unknowns = shared.length;
        double[][] normal = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            double[] solved = factor.solve(padded(shared[i]));
            right[i] = dot(solved, disagreements);
            for (int j = 0; j < unknowns; j++) {
                normal[i][j] = dot(solved, shared[j]);
            }
        }
        double[][] inverse = inverse(normal);
        double[] estimate = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            estimate[i] = dot(inverse[i], right);
        }
        return new SharedError(estimate, inverse);
    }

    /** The factor of a full matrix. */
    static BandCholesky factor(double[][] covariance) {
        int count = covariance.length;
        BandMatrix matrix = new BandMatrix(count, count - 1);
        for (int row = 0; row < count; row++) {
            for (int column = 0; column <= row; column++) {
                matrix.add(row, column, covariance[row][column]);
            }
        }
        return new BandCholesky(matrix);
    }

    /**
     * The solution of a small full system.
     *
     * @param matrix symmetric
     * @throws ArithmeticException unless it is positive definite
     */
    public static double[] solved(double[][] matrix, double[] right) {
        return Arrays.copyOf(factor(matrix).solve(padded(right)), right.length);
    }

    /** A vector as long as such a factor takes it. */
    static double[] padded(double[] vector) {
        int blocks = (vector.length + BandMatrix.BLOCK - 1) / BandMatrix.BLOCK;
        return Arrays.copyOf(vector, blocks * BandMatrix.BLOCK);
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < Math.min(one.length, other.length); i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static double[][] inverse(double[][] m) {
        if (m.length == 1) {
            return new double[][] {{1 / m[0][0]}};
        }
        double determinant = m[0][0] * m[1][1] - m[0][1] * m[1][0];
        return new double[][] {
            {m[1][1] / determinant, -m[0][1] / determinant}, {-m[1][0] / determinant, m[0][0] / determinant}
        };
    }

    @Override
    public double[] estimate() {
        return estimate.clone();
    }

    @Override
    public double[][] covariance() {
        return new double[][] {covariance[0].clone(), covariance[1].clone()};
    }

    public double chiSquare() {
        if (estimate.length == 1) {
            return estimate[0] * estimate[0] / covariance[0][0];
        }
        double[][] weight = inverse(covariance);
        return estimate[0] * dot(weight[0], estimate) + estimate[1] * dot(weight[1], estimate);
    }
}
