package org.cupwright.green.spline;

/**
 * Where ground steps: strips in which a fitted spline bends far more than it does on most of the green. There the
 * penalty that suits the rest is wrong by orders of magnitude, and points far off the surface are no blunders.
 *
 * <p>Kept as the coefficients of the grid it was found on, so that it can be asked for any place.
 */
final class Steps {
    /** The penalty at a step is at least this share of the one elsewhere (our choice: keeps the equations sound). */
    private static final double LEAST_WEIGHT = 1e-6;

    /**
     * So many times less than the mean of a fit's squared differences asks for (our choice: they are shrunk by the
     * penalty they were fitted with, and a step has its bends at foot and shoulder, not evenly).
     */
    private static final double TIMES_LESS = 6;

    /** Penalties within such a factor of each other are alike (our choice: it moves an error by a tenth). */
    private static final double ALIKE = 1.5;

    private final KnotGrid grid;
    private final boolean[] core;
    private final boolean[] flagged;
    private final double weight;

    private Steps(KnotGrid grid, boolean[] core, boolean[] flagged, double weight) {
        this.grid = grid;
        this.core = core;
        this.flagged = flagged;
        this.weight = weight;
    }

    static Steps none(KnotGrid grid) {
        boolean[] nowhere = new boolean[grid.coefficients()];
        return new Steps(grid, nowhere, nowhere, 1);
    }

    /** The steps that a fit shows. */
    static Steps of(KnotGrid grid, double[] coefficients) {
        Bends bends = new Bends(grid, coefficients);
        boolean[] bent = bends.strips();
        boolean[] wide = bends.widened(bent);
        return new Steps(grid, bent, wide, weight(bends.sizes(), bent, wide));
    }

    /** The same steps with the penalty that a fit shows to suit them. */
    Steps reweighted(KnotGrid knots, double[] coefficients) {
        boolean[] there = new boolean[knots.coefficients()];
        boolean[] about = new boolean[knots.coefficients()];
        for (int i = 0; i < knots.coefficientsEast(); i++) {
            for (int j = 0; j < knots.coefficientsNorth(); j++) {
                double east = knots.west() + (i - 1) * knots.spacingMetres();
                double north = knots.south() + (j - 1) * knots.spacingMetres();
                there[knots.index(i, j)] = isIn(core, east, north);
                about[knots.index(i, j)] = isIn(flagged, east, north);
            }
        }
        return new Steps(grid, core, flagged, weight(new Bends(knots, coefficients).sizes(), there, about));
    }

    /** Whether two penalties at the steps are alike enough to stop. */
    boolean isAlike(Steps other) {
        double ratio = weight / other.weight;
        return ratio < ALIKE && ratio > 1 / ALIKE;
    }

    boolean isNone() {
        for (boolean one : flagged) {
            if (one) {
                return false;
            }
        }
        return true;
    }

    /** What the prior of a penalised spline says of its weights: as the inverse of the mean squared differences. */
    private static double weight(double[] bends, boolean[] there, boolean[] about) {
        double atStep = meanSquare(bends, there, true);
        double elsewhere = meanSquare(bends, about, false);
        double ratio = elsewhere / atStep / TIMES_LESS;
        return ratio > 0 ? Math.min(1, Math.max(LEAST_WEIGHT, ratio)) : 1;
    }

    private static double meanSquare(double[] bends, boolean[] where, boolean wanted) {
        double squares = 0;
        int count = 0;
        for (int i = 0; i < bends.length; i++) {
            if (bends[i] >= 0 && where[i] == wanted) {
                squares += bends[i] * bends[i];
                count++;
            }
        }
        return squares / count;
    }

    /** Whether a place lies at a step: whether the coefficient nearest to it does. */
    boolean at(double east, double north) {
        return isIn(flagged, east, north);
    }

    /** Whether a place lies at a step or no farther from one than two coefficients: it may go on unseen. */
    boolean isNear(double east, double north) {
        double reach = 2 * grid.spacingMetres();
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                if (at(east + i * reach, north + j * reach)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a place lies where the ground bends, not merely about it. */
    boolean isInMidst(double east, double north) {
        return isIn(core, east, north);
    }

    private boolean isIn(boolean[] piece, double east, double north) {
        int i = (int) Math.rint(grid.cellsFromWest(east)) + 1;
        int j = (int) Math.rint(grid.cellsFromSouth(north)) + 1;
        return i >= 0
                && j >= 0
                && i < grid.coefficientsEast()
                && j < grid.coefficientsNorth()
                && piece[grid.index(i, j)];
    }

    /** By how much the penalty about each coefficient of a grid is multiplied. */
    double[] weights(KnotGrid knots) {
        double[] weights = new double[knots.coefficients()];
        for (int i = 0; i < knots.coefficientsEast(); i++) {
            for (int j = 0; j < knots.coefficientsNorth(); j++) {
                double east = knots.west() + (i - 1) * knots.spacingMetres();
                double north = knots.south() + (j - 1) * knots.spacingMetres();
                weights[knots.index(i, j)] = at(east, north) ? weight : 1;
            }
        }
        return weights;
    }
}
