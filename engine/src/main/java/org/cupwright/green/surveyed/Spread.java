package org.cupwright.green.surveyed;

/** How points lie about a spot: their number, the nearest, and how far they spread across the line they lie along. */
final class Spread {
    private int count;
    private double nearestSquare = Double.POSITIVE_INFINITY;
    private double sumX;
    private double sumY;
    private double sumXX;
    private double sumXY;
    private double sumYY;

    void add(double dx, double dy) {
        count++;
        nearestSquare = Math.min(nearestSquare, dx * dx + dy * dy);
        sumX += dx;
        sumY += dy;
        sumXX += dx * dx;
        sumXY += dx * dy;
        sumYY += dy * dy;
    }

    int count() {
        return count;
    }

    double nearestMetres() {
        return Math.sqrt(nearestSquare);
    }

    /** Standard deviation across the direction in which the points spread most. */
    double leastMetres() {
        if (count == 0) {
            return 0;
        }
        double xx = sumXX / count - sumX / count * (sumX / count);
        double xy = sumXY / count - sumX / count * (sumY / count);
        double yy = sumYY / count - sumY / count * (sumY / count);
        double least = (xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy);
        return Math.sqrt(Math.max(0, least));
    }
}
