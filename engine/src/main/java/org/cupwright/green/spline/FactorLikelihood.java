package org.cupwright.green.spline;

/**
 * How likely disagreements are that have the covariance V + f²·S: S with the amplitude that something was taken to
 * have, f how many times as great it is. Summed over a grid of factors.
 */
public final class FactorLikelihood {
    /** Fewer spots at which slopes disagree leave an amplitude as it is (our choice). */
    public static final int LEAST_SPOTS = 5;

    private static final double GREATEST = 4;

    private final double[] logs;

    private FactorLikelihood(double[] logs) {
        this.logs = logs;
    }

    /**
     * Looks at every factor of the grid.
     *
     * @param disagreements rise per metre
     * @param fixed their covariance V from everything but the shared error
     * @param shared their covariance S from the shared error with the amplitude it is taken to have
     */
    public static FactorLikelihood of(double[] disagreements, double[][] fixed, double[][] shared) {
        double[] logs = new double[(int) Math.round(GREATEST / FactorPosterior.GRID)];
        for (int i = 0; i < logs.length; i++) {
            double factor = FactorPosterior.at(i);
            logs[i] = logLikelihood(disagreements, sum(fixed, shared, factor * factor));
        }
        return new FactorLikelihood(logs);
    }

    /** What is known of the factor after the disagreements. */
    public FactorPosterior after(FactorPrior prior) {
        double[] shares = new double[logs.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = logs[i] + prior.logDensity(FactorPosterior.at(i));
            most = Math.max(most, shares[i]);
        }
        double all = 0;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = StrictMath.exp(shares[i] - most);
            all += shares[i];
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= all;
        }
        return new FactorPosterior(shares);
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
