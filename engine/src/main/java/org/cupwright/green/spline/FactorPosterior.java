package org.cupwright.green.spline;

/**
 * How many times as great an amplitude f is as it was taken to be, as disagreements tell that have the covariance V +
 * f²·S.
 *
 * @param mean mean of f afterwards
 * @param meanSquare mean of f²
 */
public record FactorPosterior(double mean, double meanSquare) {
    /** Fewer spots at which slopes disagree leave an amplitude as it is (our choice). */
    public static final int LEAST_SPOTS = 5;

    /** What is known of the factor before. */
    public interface Prior {
        /** Log of the density of f, up to a constant. */
        double logDensity(double factor);

        /**
         * f² is gamma-distributed about 1. With shape 1 that is an exponential distribution: of all with that mean it
         * says least.
         */
        static Prior gamma(double shape) {
            return factor -> (2 * shape - 1) * StrictMath.log(factor) - shape * factor * factor;
        }

        /**
         * f² is exponentially distributed with a rate that is itself a guess, gamma-distributed with shape 2: its
         * density is 2/(1+f²)³, with the mean 1 and no variance. What is set then holds a factor less, that is far from
         * 1 by what was measured.
         */
        static Prior wide() {
            return factor -> StrictMath.log(factor) - 3 * StrictMath.log(1 + factor * factor);
        }
    }

    private static final double GRID = 0.05;
    private static final double GREATEST = 4;

    /**
     * Sums over a grid of factors.
     *
     * @param disagreements rise per metre
     * @param fixed their covariance V from everything but the shared error
     * @param shared their covariance S from the shared error with the amplitude it is taken to have
     * @param prior what is known of the factor before
     */
    public static FactorPosterior of(double[] disagreements, double[][] fixed, double[][] shared, Prior prior) {
        int count = (int) Math.round(GREATEST / GRID);
        double[] logs = new double[count];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double factor = (i + 0.5) * GRID;
            logs[i] = prior.logDensity(factor) + logLikelihood(disagreements, sum(fixed, shared, factor * factor));
            most = Math.max(most, logs[i]);
        }
        double[] sums = new double[3];
        for (int i = 0; i < count; i++) {
            double factor = (i + 0.5) * GRID;
            double weight = StrictMath.exp(logs[i] - most);
            sums[0] += weight;
            sums[1] += weight * factor;
            sums[2] += weight * factor * factor;
        }
        return new FactorPosterior(sums[1] / sums[0], sums[2] / sums[0]);
    }

    /** The factor that counts: the root of the mean square. */
    public double factor() {
        return Math.sqrt(meanSquare);
    }

    /** Standard error of the factor. */
    public double error() {
        return Math.sqrt(Math.max(0, meanSquare - mean * mean));
    }

    private static double logLikelihood(double[] disagreements, double[][] covariance) {
        BandCholesky factor = SharedError.factor(covariance);
        double[] solved = factor.solve(SharedError.padded(disagreements));
        double square = 0;
        for (int i = 0; i < disagreements.length; i++) {
            square += solved[i] * disagreements[i];
        }
        return -(factor.logDeterminant() + square) / 2;
    }

    static double[][] sum(double[][] one, double[][] other, double times) {
        double[][] sum = new double[one.length][one.length];
        for (int row = 0; row < sum.length; row++) {
            for (int column = 0; column < sum.length; column++) {
                sum[row][column] = one[row][column] + times * other[row][column];
            }
        }
        return sum;
    }
}
