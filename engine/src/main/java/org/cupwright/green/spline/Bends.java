package org.cupwright.green.spline;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/** How much a fitted spline bends about each of its coefficients, and the strips in which it bends far more. */
final class Bends {
    /**
     * A second difference that exceeds the median one so many times is a step's (our choice: on even, on lively and on
     * fractal ground one of a hundred is three times the median, and such do not lie together).
     */
    private static final double TIMES_MEDIAN = 3.5;

    /** Fewer coefficients in one piece are a bump or a trampled spot, not a step (our choice). */
    private static final int LEAST_COEFFICIENTS = 5;

    private final KnotGrid grid;
    private final int[][] places;
    private final double[] sizes;

    Bends(KnotGrid grid, double[] coefficients) {
        this.grid = grid;
        this.places = places(grid);
        this.sizes = sizes(grid, coefficients);
    }

    /** Size of the second differences about each coefficient; negative on the rim, where there is none. */
    double[] sizes() {
        return sizes.clone();
    }

    /** The coefficients of strips that bend far more than the median one. */
    boolean[] strips() {
        boolean[] bent = new boolean[sizes.length];
        double[] sorted =
                Arrays.stream(sizes).filter(bend -> bend >= 0).sorted().toArray();
        if (sorted.length == 0) {
            return bent;
        }
        double limit = TIMES_MEDIAN * sorted[sorted.length / 2];
        for (int i = 0; i < sizes.length; i++) {
            bent[i] = limit > 0 && sizes[i] > limit;
        }
        dropSmallPieces(bent);
        return bent;
    }

    private static double[] sizes(KnotGrid grid, double[] c) {
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

    private void forEachAbout(int east, int north, About about) {
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

    private void dropSmallPieces(boolean[] flagged) {
        boolean[] seen = new boolean[flagged.length];
        for (int start = 0; start < flagged.length; start++) {
            if (flagged[start] && !seen[start]) {
                int[] piece = piece(flagged, seen, start);
                if (piece.length < LEAST_COEFFICIENTS) {
                    for (int one : piece) {
                        flagged[one] = false;
                    }
                }
            }
        }
    }

    private int[] piece(boolean[] flagged, boolean[] seen, int start) {
        int[] piece = new int[flagged.length];
        int count = 0;
        Deque<Integer> open = new ArrayDeque<>();
        open.add(start);
        seen[start] = true;
        while (!open.isEmpty()) {
            int one = open.remove();
            piece[count++] = one;
            forEachAbout(places[one][0], places[one][1], other -> {
                if (flagged[other] && !seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            });
        }
        return Arrays.copyOf(piece, count);
    }

    /** A coefficient wider all round: the penalty that straddles the step's edge is the step's. */
    boolean[] widened(boolean[] flagged) {
        boolean[] wide = flagged.clone();
        for (int one = 0; one < flagged.length; one++) {
            if (flagged[one]) {
                forEachAbout(places[one][0], places[one][1], other -> wide[other] = true);
            }
        }
        return wide;
    }
}
