package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;

/** Survey points in square buckets, for questions about the neighbourhood of a spot. */
final class PointIndex {
    private static final double BUCKET = 0.5;

    private final SurveyPoints points;
    private final double west;
    private final double south;
    private final int columns;
    private final int rows;
    private final int[] start;
    private final int[] order;

    PointIndex(SurveyPoints points, Knots knots) {
        this.points = points;
        this.west = knots.west();
        this.south = knots.south();
        this.columns = (int) Math.ceil(knots.columns() * knots.spacing() / BUCKET);
        this.rows = (int) Math.ceil(knots.rows() * knots.spacing() / BUCKET);
        this.start = new int[columns * rows + 1];
        this.order = new int[points.size()];
        for (int i = 0; i < points.size(); i++) {
            start[bucket(i) + 1]++;
        }
        for (int b = 0; b < columns * rows; b++) {
            start[b + 1] += start[b];
        }
        int[] next = start.clone();
        for (int i = 0; i < points.size(); i++) {
            order[next[bucket(i)]++] = i;
        }
    }

    private int bucket(int i) {
        return row(points.north(i)) * columns + column(points.east(i));
    }

    private int column(double east) {
        return Math.min(columns - 1, Math.max(0, (int) Math.floor((east - west) / BUCKET)));
    }

    private int row(double north) {
        return Math.min(rows - 1, Math.max(0, (int) Math.floor((north - south) / BUCKET)));
    }

    /** Takes the points within a radius one by one: offset east, offset north, number. */
    interface Visitor {
        void visit(double dx, double dy, int point);
    }

    void within(double east, double north, double radius, Visitor visitor) {
        for (int row = row(north - radius); row <= row(north + radius); row++) {
            for (int column = column(east - radius); column <= column(east + radius); column++) {
                int bucket = row * columns + column;
                for (int k = start[bucket]; k < start[bucket + 1]; k++) {
                    double dx = points.east(order[k]) - east;
                    double dy = points.north(order[k]) - north;
                    if (dx * dx + dy * dy <= radius * radius) {
                        visitor.visit(dx, dy, order[k]);
                    }
                }
            }
        }
    }
}
