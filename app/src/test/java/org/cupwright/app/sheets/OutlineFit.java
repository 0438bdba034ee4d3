package org.cupwright.app.sheets;

import java.awt.geom.Point2D;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Coordinate;

/**
 * From the ground to the paper and back, by least squares through an outline's corners as they are drawn: an affine map
 * of its own making, which knows nothing of how drawings are made.
 */
final class OutlineFit {
    private final double[] across;
    private final double[] up;
    private final Coordinate origin;
    private final double worstMillimetres;

    private OutlineFit(double[] across, double[] up, Coordinate origin, double worstMillimetres) {
        this.across = across;
        this.up = up;
        this.origin = origin;
        this.worstMillimetres = worstMillimetres;
    }

    static OutlineFit of(Outline outline, List<Point2D> drawn) {
        Coordinate[] ring = outline.polygon().getExteriorRing().getCoordinates();
        if (drawn.size() < ring.length - 1) {
            throw new IllegalArgumentException(drawn.size() + " corners are drawn of " + ring.length);
        }
        Coordinate origin = outline.polygon().getCentroid().getCoordinate();
        double[][] sums = new double[3][3];
        double[] x = new double[3];
        double[] y = new double[3];
        for (int i = 0; i < ring.length - 1; i++) {
            double[] row = row(ring[i], origin);
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    sums[r][c] += row[r] * row[c];
                }
                x[r] += row[r] * drawn.get(i).getX();
                y[r] += row[r] * drawn.get(i).getY();
            }
        }
        OutlineFit fit = new OutlineFit(solved(sums, x), solved(sums, y), origin, 0);
        double worst = 0;
        for (int i = 0; i < ring.length - 1; i++) {
            worst = Math.max(worst, fit.paper(MapPoint.of(ring[i])).distance(drawn.get(i)));
        }
        return new OutlineFit(fit.across, fit.up, origin, worst);
    }

    private static double[] row(Coordinate at, Coordinate origin) {
        return new double[] {1, at.x - origin.x, at.y - origin.y};
    }

    /** Three equations by Cramer's rule. */
    private static double[] solved(double[][] sums, double[] right) {
        double whole = determinant(sums);
        double[] answer = new double[3];
        for (int column = 0; column < 3; column++) {
            double[][] other = new double[3][];
            for (int r = 0; r < 3; r++) {
                other[r] = sums[r].clone();
                other[r][column] = right[r];
            }
            answer[column] = determinant(other) / whole;
        }
        return answer;
    }

    private static double determinant(double[][] m) {
        return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    }

    /** How far the worst corner is from where the fit has it: whether the outline was drawn true to scale at all. */
    double worstMillimetres() {
        return worstMillimetres;
    }

    Point2D paper(MapPoint ground) {
        double[] row = row(ground.toCoordinate(), origin);
        return new Point2D.Double(
                across[0] + across[1] * row[1] + across[2] * row[2], up[0] + up[1] * row[1] + up[2] * row[2]);
    }

    MapPoint ground(Point2D paper) {
        double x = paper.getX() - across[0];
        double y = paper.getY() - up[0];
        double determinant = across[1] * up[2] - across[2] * up[1];
        return new MapPoint(
                origin.x + (x * up[2] - across[2] * y) / determinant,
                origin.y + (across[1] * y - up[1] * x) / determinant);
    }
}
