package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/**
 * Products of residuals by the distance of their points where points are dense: residuals are summed in small squares,
 * and all pairs of two squares count with the distance of these. Every pair is in it, at a distance that is good to a
 * part of a class.
 */
final class ResidualLattice {
    /** Side of a square, m (our choice: well within a class of distance, and an eighth of the shortest relief). */
    private static final double SQUARE_METRES = 0.125;

    final double[] products;
    final double[] counts;

    private final double[][] sums;
    private final double[][] points;

    /**
     * @param residuals by place in the order of the basis
     * @param counting which of the places count
     */
    ResidualLattice(PointBasis basis, double[] residuals, boolean[] counting, int classes) {
        this.products = new double[classes];
        this.counts = new double[classes];
        double[] box = PointIndex.box(basis.points);
        int columns = (int) ((box[2] - box[0]) / SQUARE_METRES) + 1;
        int rows = (int) ((box[3] - box[1]) / SQUARE_METRES) + 1;
        this.sums = new double[columns][rows];
        this.points = new double[columns][rows];
        SurveyPoints survey = basis.points;
        for (int place = 0; place < residuals.length; place++) {
            if (counting[place]) {
                int column = (int) ((survey.east(basis.order[place]) - box[0]) / SQUARE_METRES);
                int row = (int) ((survey.north(basis.order[place]) - box[1]) / SQUARE_METRES);
                sums[column][row] += residuals[place];
                points[column][row]++;
                // Pairs within a square are all of it less each point with itself.
                products[0] -= residuals[place] * residuals[place] / 2;
                counts[0] -= 0.5;
            }
        }
        sum(classes);
    }

    private void sum(int classes) {
        double reach = classes * ResidualPairs.CLASS_METRES / SQUARE_METRES;
        int most = (int) reach;
        for (int east = 0; east <= most; east++) {
            for (int north = east == 0 ? 0 : -most; north <= most; north++) {
                double apart = Math.sqrt(east * east + north * north);
                if (apart <= reach) {
                    int place = (int) Math.min(classes - 1, apart * SQUARE_METRES / ResidualPairs.CLASS_METRES);
                    double times = east == 0 && north == 0 ? 0.5 : 1;
                    products[place] += times * product(sums, east, north);
                    counts[place] += times * product(points, east, north);
                }
            }
        }
    }

    /** The sum of the products of all squares with those so many columns and rows further. */
    private static double product(double[][] squares, int east, int north) {
        double sum = 0;
        for (int column = 0; column + east < squares.length; column++) {
            sum += product(squares[column], squares[column + east], north);
        }
        return sum;
    }

    private static double product(double[] one, double[] other, int north) {
        int from = Math.max(0, -north);
        int to = Math.min(one.length, one.length - north);
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int k = from;
        for (; k + 3 < to; k += 4) {
            a += one[k] * other[k + north];
            b += one[k + 1] * other[k + 1 + north];
            c += one[k + 2] * other[k + 2 + north];
            d += one[k + 3] * other[k + 3 + north];
        }
        for (; k < to; k++) {
            a += one[k] * other[k + north];
        }
        return a + b + (c + d);
    }
}
