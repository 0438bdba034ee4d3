package org.cupwright.green.spline;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How the slopes at any two spots of a fitted spline hang together: covariances of the planes' gradients over the disc.
 *
 * <p>One solve of the normal equations gives what ties one spot's gradient to every coefficient; the covariance with
 * another spot is then a short sum. Immutable, safe for use by several threads.
 */
public final class SlopeTies {
    private final FittedSpline fitted;
    private final double variance;
    private final HeightFunctionals disc;
    private final List<double[]> shared;
    private final List<double[]> directions;
    /** By the place within a cell: spots on a lattice share a few. */
    private final Map<List<Double>, Stencil> stencils = new ConcurrentHashMap<>();

    /**
     * @param shared directions of errors that points share
     * @param directions what observations have taken off
     */
    SlopeTies(
            FittedSpline fitted,
            double variance,
            double discRadiusMetres,
            List<double[]> shared,
            List<double[]> directions) {
        this.fitted = fitted;
        this.variance = variance;
        this.disc = HeightFunctionals.overDisc(discRadiusMetres);
        this.shared = shared;
        this.directions = directions;
    }

    /** The ties of one spot's gradient; the disc about it must lie on the knots. */
    public Spot of(double east, double north) {
        Place place = new Place(east, north);
        return new Spot(
                gain(place.spread(HeightFunctionals.GRADIENT_EAST)),
                gain(place.spread(HeightFunctionals.GRADIENT_NORTH)));
    }

    /** The covariance of one combination of coefficients with every coefficient. */
    private double[] gain(double[] weights) {
        double[] gain = fitted.factor.solve(weights);
        for (int i = 0; i < gain.length; i++) {
            gain[i] *= variance;
        }
        shared.forEach(direction -> addShare(gain, 1, weights, direction));
        directions.forEach(direction -> addShare(gain, -1, weights, direction));
        return gain;
    }

    private static void addShare(double[] gain, double times, double[] weights, double[] direction) {
        double share = 0;
        for (int i = 0; i < weights.length; i++) {
            share += weights[i] * direction[i];
        }
        for (int i = 0; i < gain.length; i++) {
            gain[i] += times * share * direction[i];
        }
    }

    /** To a millionth of a cell, so that rounding of coordinates does not make many places of one. */
    private static double rounded(double cells) {
        return Math.rint(1e6 * cells) / 1e6;
    }

    private final class Place {
        private final Stencil stencil;
        private final int corner;

        Place(double east, double north) {
            KnotGrid grid = fitted.equations.grid;
            double x = grid.cellsFromWest(east);
            double y = grid.cellsFromSouth(north);
            int cellEast = grid.cellEast(x);
            int cellNorth = grid.cellNorth(y);
            List<Double> within = List.of(rounded(x - cellEast), rounded(y - cellNorth));
            this.stencil =
                    stencils.computeIfAbsent(within, place -> Stencil.at(place.get(0), place.get(1), disc, grid));
            this.corner = grid.index(cellEast, cellNorth);
        }

        double[] spread(int row) {
            return stencil.spread(row, corner, fitted.coefficients.length);
        }

        double apply(int row, double[] gain) {
            return stencil.apply(row, gain, corner);
        }
    }

    /** One spot's ties with all others. */
    public final class Spot {
        private final double[] eastGain;
        private final double[] northGain;

        private Spot(double[] eastGain, double[] northGain) {
            this.eastGain = eastGain;
            this.northGain = northGain;
        }

        /**
         * Covariances with another spot's gradient: the other's east with this one's east and north, then the other's
         * north with this one's east and north.
         */
        public double[] with(double east, double north) {
            Place other = new Place(east, north);
            return new double[] {
                other.apply(HeightFunctionals.GRADIENT_EAST, eastGain),
                other.apply(HeightFunctionals.GRADIENT_EAST, northGain),
                other.apply(HeightFunctionals.GRADIENT_NORTH, eastGain),
                other.apply(HeightFunctionals.GRADIENT_NORTH, northGain)
            };
        }
    }
}
