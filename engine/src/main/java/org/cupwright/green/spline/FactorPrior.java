package org.cupwright.green.spline;

/** What is known beforehand of how many times as great an amplitude is as it was taken to be. */
public interface FactorPrior {
    /** Log of the density of the factor f, up to a constant. */
    double logDensity(double factor);

    /**
     * f² is gamma-distributed about 1. With shape 1 that is an exponential distribution: of all with that mean it says
     * least.
     */
    static FactorPrior gamma(double shape) {
        return factor -> (2 * shape - 1) * StrictMath.log(factor) - shape * factor * factor;
    }

    /**
     * f² is exponentially distributed with a rate that is itself a guess, gamma-distributed with shape 2: its density
     * is 2/(1+f²)³, with the mean 1 and no variance. What is set then holds a factor less, that is far from 1 by what
     * was measured.
     */
    static FactorPrior wide() {
        return factor -> StrictMath.log(factor) - 3 * StrictMath.log(1 + factor * factor);
    }

    /** Nothing is known of f: the disagreements are to speak alone. */
    static FactorPrior none() {
        return factor -> 0;
    }
}
