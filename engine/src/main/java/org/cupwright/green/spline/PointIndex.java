package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/** Points sorted into squares, to find those near a spot quickly. */
public final class PointIndex {
    private static final double SQUARE_METRES = 0.5;

    /** More squares than this are not laid out; they grow instead. */
    private static final int MOST_SQUARES = 4_000_000;

    private final SurveyPoints points;
    private final double west;
    private final double south;
    private final double squareMetres;
    private final int columns;
    private final int rows;
    private final int[] firsts;
    private final int[] sorted;

    public PointIndex(SurveyPoints points) {
        this.points = points;
        double[] box = box(points);
        this.west = box[0];
        this.south = box[1];
        double width = box[2] - box[0];
        double depth = box[3] - box[1];
        this.squareMetres = Math.max(SQUARE_METRES, Math.max(width, depth) / Math.sqrt(MOST_SQUARES));
        this.columns = (int) (width / squareMetres) + 1;
        this.rows = (int) (depth / squareMetres) + 1;
        this.firsts = new int[columns * rows + 1];
        this.sorted = sort();
    }

    /** West, south, east and north edge of the points. */
    public static double[] box(SurveyPoints points) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int i = 0; i < points.count(); i++) {
            box[0] = Math.min(box[0], points.east(i));
            box[1] = Math.min(box[1], points.north(i));
            box[2] = Math.max(box[2], points.east(i));
            box[3] = Math.max(box[3], points.north(i));
        }
        return box;
    }

    SurveyPoints points() {
        return points;
    }

    private int square(int point) {
        int column = (int) ((points.east(point) - west) / squareMetres);
        int row = (int) ((points.north(point) - south) / squareMetres);
        return column * rows + row;
    }

    private int[] sort() {
        for (int i = 0; i < points.count(); i++) {
            firsts[square(i) + 1]++;
        }
        for (int i = 1; i < firsts.length; i++) {
            firsts[i] += firsts[i - 1];
        }
        int[] next = firsts.clone();
        int[] order = new int[points.count()];
        for (int i = 0; i < points.count(); i++) {
            order[next[square(i)]++] = i;
        }
        return order;
    }

    /** What is done with a point and its offset from the spot. */
    public interface Near {
        void visit(int point, double east, double north);
    }

    /** Visits every point within a distance of a spot. */
    public void forEachWithin(double east, double north, double metres, Near near) {
        int fromColumn = Math.max(0, (int) Math.floor((east - metres - west) / squareMetres));
        int toColumn = Math.min(columns - 1, (int) Math.floor((east + metres - west) / squareMetres));
        int fromRow = Math.max(0, (int) Math.floor((north - metres - south) / squareMetres));
        int toRow = Math.min(rows - 1, (int) Math.floor((north + metres - south) / squareMetres));
        for (int column = fromColumn; column <= toColumn; column++) {
            for (int row = fromRow; row <= toRow; row++) {
                int square = column * rows + row;
                for (int k = firsts[square]; k < firsts[square + 1]; k++) {
                    double dx = points.east(sorted[k]) - east;
                    double dy = points.north(sorted[k]) - north;
                    if (dx * dx + dy * dy <= metres * metres) {
                        near.visit(sorted[k], dx, dy);
                    }
                }
            }
        }
    }

    /** Whether so many points lie within a distance of a spot; stops as soon as it is sure. */
    boolean holds(int least, double east, double north, double metres) {
        int fromColumn = Math.max(0, (int) Math.floor((east - metres - west) / squareMetres));
        int toColumn = Math.min(columns - 1, (int) Math.floor((east + metres - west) / squareMetres));
        int fromRow = Math.max(0, (int) Math.floor((north - metres - south) / squareMetres));
        int toRow = Math.min(rows - 1, (int) Math.floor((north + metres - south) / squareMetres));
        int count = 0;
        for (int column = fromColumn; fromRow <= toRow && column <= toColumn && count < least; column++) {
            int end = firsts[column * rows + toRow + 1];
            for (int k = firsts[column * rows + fromRow]; k < end && count < least; k++) {
                double dx = points.east(sorted[k]) - east;
                double dy = points.north(sorted[k]) - north;
                count += dx * dx + dy * dy <= metres * metres ? 1 : 0;
            }
        }
        return count >= least;
    }

    public int countWithin(double east, double north, double metres) {
        int[] count = new int[1];
        forEachWithin(east, north, metres, (point, dx, dy) -> count[0]++);
        return count[0];
    }
}
