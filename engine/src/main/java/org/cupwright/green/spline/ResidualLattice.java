package org.cupwright.green.spline;

import java.util.Arrays;
import org.cupwright.green.SurveyPoints;

/**
 * Products of residuals by the distance of their points where points are dense: residuals are summed in small squares,
 * and all pairs of two squares count with the distance of these. Every pair is in it, at a distance that is good to a
 * part of a class.
 */
final class ResidualLattice {
    /** Side of a square, m (our choice: well within a class of distance, and a tenth of the shortest relief). */
    private static final double SQUARE_METRES = 0.1;

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

    /** Every second square lies east of the first, or straight north of it: each pair of squares counts once. */
    private void sum(int classes) {
        double reach = classes * ResidualPairs.CLASS_METRES / SQUARE_METRES;
        double[][] ofProducts = new double[classes][sums[0].length];
        double[][] ofCounts = new double[classes][sums[0].length];
        for (int north = -(int) reach; north <= reach; north++) {
            double[][] northernSums = further(sums, north);
            double[][] northernPoints = further(points, north);
            for (int east = north > 0 ? 0 : 1; east <= reach; east++) {
                double apart = Math.sqrt(east * east + north * north);
                if (apart <= reach) {
                    int place = (int) Math.min(classes - 1, apart * SQUARE_METRES / ResidualPairs.CLASS_METRES);
                    addProducts(ofProducts[place], sums, northernSums, east);
                    addProducts(ofCounts[place], points, northernPoints, east);
                }
            }
        }
        for (int column = 0; column < sums.length; column++) {
            for (int row = 0; row < sums[column].length; row++) {
                products[0] += sums[column][row] * sums[column][row] / 2;
                counts[0] += points[column][row] * points[column][row] / 2;
            }
        }
        for (int place = 0; place < classes; place++) {
            products[place] += Arrays.stream(ofProducts[place]).sum();
            counts[place] += Arrays.stream(ofCounts[place]).sum();
        }
    }

    /** What each square has so many rows further north; zero beyond the edge. */
    private static double[][] further(double[][] squares, int north) {
        double[][] further = new double[squares.length][squares[0].length];
        int from = Math.max(0, -north);
        int length = squares[0].length - Math.abs(north);
        for (int column = 0; column < squares.length && length > 0; column++) {
            System.arraycopy(squares[column], from + north, further[column], from, length);
        }
        return further;
    }

    /** Adds the products of all columns with those so many further. */
    private static void addProducts(double[] to, double[][] one, double[][] other, int east) {
        int column = 0;
        for (; column + east + 1 < one.length; column += 2) {
            Rows.addProducts(to, one[column], other[column + east], one[column + 1], other[column + east + 1]);
        }
        if (column + east < one.length) {
            Rows.addProducts(to, one[column], other[column + east]);
        }
    }
}
