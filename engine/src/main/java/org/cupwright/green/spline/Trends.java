package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;

/**
 * A tilt or a dome that the whole survey has, where slopes measured on the spot show it beyond chance: then it is left
 * wholly open, as a direction with a wide standard deviation, for those slopes to settle.
 *
 * <p>Chance is one in a hundred and the least that counts a quarter of a point, as where a person is told of it.
 */
public final class Trends {
    /**
     * Chi-square with two degrees of freedom, exceeded by chance once in a hundred: −2 ln 0.01. One in a hundred is
     * our choice.
     */
    public static final double TILT_LIMIT = 9.2103;

    /** Chi-square with one degree of freedom, exceeded by chance once in a hundred: 2.5758². */
    public static final double DOME_LIMIT = 6.6349;

    /** Less than this is not worth a word, however sure (our choice: half of what a rule's answer turns on). */
    public static final double LEAST_SLOPE = 0.0025;

    /** A dome is judged by the slope it makes so far from its middle, m: as far as most of a green lies. */
    public static final double DOME_REACH_METRES = 5;

    /** What was found is left open by so many times its size (our choice). */
    private static final double OPEN = 3;

    private Trends() {}

    /** The directions in which the whole survey is off; empty where chance explains the disagreements. */
    static List<double[]> of(KnotGrid grid, ObservedSlopes slopes, double[] disagreements, double[][] covariance) {
        double east = middle(slopes, true);
        double north = middle(slopes, false);
        double[] tiltEast = surface(grid, slopes.length, (x, y) -> x - east);
        double[] tiltNorth = surface(grid, slopes.length, (x, y) -> y - north);
        double[] dome = surface(grid, slopes.length, (x, y) -> (Math.pow(x - east, 2) + Math.pow(y - north, 2)) / 2);
        List<double[]> found = new ArrayList<>();
        SharedError tilt =
                SharedError.of(disagreements, covariance, column(slopes, tiltEast), column(slopes, tiltNorth));
        double size = Math.hypot(tilt.estimate()[0], tilt.estimate()[1]);
        if (tilt.chiSquare() > TILT_LIMIT && size >= LEAST_SLOPE) {
            found.add(SharedDirections.times(OPEN * size, tiltEast));
            found.add(SharedDirections.times(OPEN * size, tiltNorth));
        }
        SharedError domed = SharedError.of(disagreements, covariance, column(slopes, dome));
        double perMetre = Math.abs(domed.estimate()[0]);
        if (domed.chiSquare() > DOME_LIMIT && DOME_REACH_METRES * perMetre >= LEAST_SLOPE) {
            found.add(SharedDirections.times(OPEN * perMetre, dome));
        }
        return found;
    }

    private static double middle(ObservedSlopes slopes, boolean towardsEast) {
        return slopes.observations().stream()
                .mapToDouble(slope -> towardsEast ? slope.east() : slope.north())
                .average()
                .orElseThrow();
    }

    private static double[] column(ObservedSlopes slopes, double[] direction) {
        double[] column = new double[slopes.rows()];
        for (int row = 0; row < column.length; row++) {
            column[row] = slopes.of(row, direction);
        }
        return column;
    }

    /** Heights at a place. */
    private interface Heights {
        double at(double east, double north);
    }

    /** A plane or quadratic by its values at the coefficients' places; a quadratic is met up to a constant height. */
    private static double[] surface(KnotGrid grid, int length, Heights heights) {
        double[] coefficients = new double[length];
        for (int east = 0; east < grid.coefficientsEast(); east++) {
            for (int north = 0; north < grid.coefficientsNorth(); north++) {
                coefficients[grid.index(east, north)] = heights.at(
                        grid.west() + (east - 1) * grid.spacingMetres(),
                        grid.south() + (north - 1) * grid.spacingMetres());
            }
        }
        return coefficients;
    }
}
