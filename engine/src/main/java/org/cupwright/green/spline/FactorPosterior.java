package org.cupwright.green.spline;

/** How many times as great an amplitude f is as it was taken to be, after disagreements were looked at. */
public final class FactorPosterior {
    static final double GRID = 0.05;

    /** Share of the cases beyond either end of an interval. */
    private static final double TAIL = 0.025;

    /** Share of the cases in which f is within each step of the grid. */
    private final double[] shares;

    FactorPosterior(double[] shares) {
        this.shares = shares;
    }

    /** The factor in the middle of a step of the grid. */
    static double at(int step) {
        return (step + 0.5) * GRID;
    }

    /** The factor that counts: the root of the mean of f². */
    public double factor() {
        double meanSquare = 0;
        for (int i = 0; i < shares.length; i++) {
            meanSquare += shares[i] * at(i) * at(i);
        }
        return Math.sqrt(meanSquare);
    }

    /**
     * The standard error of a factor: half the way to the farther end of the interval in which f is in 95 of 100 cases.
     * It may well be greater by more than it may be less.
     */
    public double errorOf(double factor) {
        return Math.max(factor - quantile(TAIL), quantile(1 - TAIL) - factor) / 2;
    }

    /** The factor that f is below in this share of the cases; within a step all are alike. */
    private double quantile(double share) {
        double below = 0;
        for (int i = 0; i < shares.length; i++) {
            if (below + shares[i] >= share) {
                return (i + (share - below) / shares[i]) * GRID;
            }
            below += shares[i];
        }
        return shares.length * GRID;
    }
}
