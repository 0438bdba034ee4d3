package org.cupwright.green.spline;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Where ground steps: strips in which a fitted spline bends far more than it does on most of the green. There the
 * penalty that suits the rest is wrong by orders of magnitude, and points far off the surface are no blunders.
 *
 * <p>Kept as the coefficients of the grid it was found on, so that it can be asked for any place.
 */
final class Steps {
    /**
     * A second difference that exceeds the median one so many times is a step's (our choice: on even, on lively and on
     * fractal ground one of a hundred is three times the median, and such do not lie together).
     */
    private static final double TIMES_MEDIAN = 3.5;

    /** Fewer coefficients in one piece are a bump or a trampled spot, not a step (our choice). */
    private static final int LEAST_COEFFICIENTS = 5;

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
        double[] bends = bends(grid, coefficients);
        double[] sorted =
                Arrays.stream(bends).filter(bend -> bend >= 0).sorted().toArray();
        if (sorted.length == 0) {
            return none(grid);
        }
        double limit = TIMES_MEDIAN * sorted[sorted.length / 2];
        boolean[] flagged = new boolean[bends.length];
        for (int i = 0; i < bends.length; i++) {
            flagged[i] = limit > 0 && bends[i] > limit;
        }
        dropSmallPieces(grid, flagged);
        boolean[] wide = widened(grid, flagged);
        return new Steps(grid, flagged, wide, weight(bends, flagged, wide));
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
        return new Steps(grid, core, flagged, weight(bends(knots, coefficients), there, about));
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

    /** Size of the second differences about each coefficient; negative on the rim, where there is none. */
    private static double[] bends(KnotGrid grid, double[] c) {
        double[] bends = new double[c.length];
        Arrays.fill(bends, -1);
        int east = grid.strideEast();
        int north = grid.strideNorth();
        for (int i = 1; i < grid.coefficientsEast() - 1; i++) {
            for (int j = 1; j < grid.coefficientsNorth() - 1; j++) {
                int k = grid.index(i, j);
                bends[k] = Math.hypot(c[k - east] - 2 * c[k] + c[k + east], c[k - north] - 2 * c[k] + c[k + north]);
            }
        }
        return bends;
    }

    private interface About {
        void visit(int other);
    }

    private static void forEachAbout(KnotGrid grid, int east, int north, About about) {
        for (int i = Math.max(0, east - 1); i <= Math.min(grid.coefficientsEast() - 1, east + 1); i++) {
            for (int j = Math.max(0, north - 1); j <= Math.min(grid.coefficientsNorth() - 1, north + 1); j++) {
                about.visit(grid.index(i, j));
            }
        }
    }

    private static int[][] places(KnotGrid grid) {
        int[][] places = new int[grid.coefficients()][];
        for (int i = 0; i < grid.coefficientsEast(); i++) {
            for (int j = 0; j < grid.coefficientsNorth(); j++) {
                places[grid.index(i, j)] = new int[] {i, j};
            }
        }
        return places;
    }

    private static void dropSmallPieces(KnotGrid grid, boolean[] flagged) {
        int[][] places = places(grid);
        boolean[] seen = new boolean[flagged.length];
        for (int start = 0; start < flagged.length; start++) {
            if (flagged[start] && !seen[start]) {
                int[] piece = piece(grid, places, flagged, seen, start);
                if (piece.length < LEAST_COEFFICIENTS) {
                    for (int one : piece) {
                        flagged[one] = false;
                    }
                }
            }
        }
    }

    private static int[] piece(KnotGrid grid, int[][] places, boolean[] flagged, boolean[] seen, int start) {
        int[] piece = new int[flagged.length];
        int count = 0;
        Deque<Integer> open = new ArrayDeque<>();
        open.add(start);
        seen[start] = true;
        while (!open.isEmpty()) {
            int one = open.remove();
            piece[count++] = one;
            forEachAbout(grid, places[one][0], places[one][1], other -> {
                if (flagged[other] && !seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            });
        }
        return Arrays.copyOf(piece, count);
    }

    /** A coefficient wider all round: the penalty that straddles the step's edge is the step's. */
    private static boolean[] widened(KnotGrid grid, boolean[] flagged) {
        int[][] places = places(grid);
        boolean[] wide = flagged.clone();
        for (int one = 0; one < flagged.length; one++) {
            if (flagged[one]) {
                forEachAbout(grid, places[one][0], places[one][1], other -> wide[other] = true);
            }
        }
        return wide;
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
