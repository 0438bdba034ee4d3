package org.cupwright.testing;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What is true of a surface over a disc: the least-squares plane's gradient and the least-squares quadratic's second
 * derivatives, by a dense solve over a fine square grid of points inside the disc.
 */
public record TrueDisc(double gradientEast, double gradientNorth, double east2, double eastNorth, double north2) {
    private static final int PER_RADIUS = 12;

    public static TrueDisc of(Surface surface, double east, double north, double radiusMetres) {
        double step = radiusMetres / PER_RADIUS;
        int side = 2 * PER_RADIUS;
        double[][] offsets = new double[side * side][];
        int count = 0;
        for (int i = 0; i < side * side; i++) {
            double dx = (i / side - PER_RADIUS + 0.5) * step;
            double dy = (i % side - PER_RADIUS + 0.5) * step;
            if (Math.hypot(dx, dy) <= radiusMetres) {
                offsets[count++] = new double[] {dx, dy};
            }
        }
        RealMatrix plane = new Array2DRowRealMatrix(count, 3);
        RealMatrix quadratic = new Array2DRowRealMatrix(count, 6);
        RealVector heights = new ArrayRealVector(count);
        Jet jet = new Jet();
        for (int i = 0; i < count; i++) {
            double dx = offsets[i][0];
            double dy = offsets[i][1];
            plane.setRow(i, new double[] {1, dx, dy});
            quadratic.setRow(i, new double[] {1, dx, dy, dx * dx / 2, dx * dy, dy * dy / 2});
            surface.at(east + dx, north + dy, jet);
            heights.setEntry(i, jet.z);
        }
        RealVector p = new QRDecomposition(plane).getSolver().solve(heights);
        RealVector q = new QRDecomposition(quadratic).getSolver().solve(heights);
        return new TrueDisc(p.getEntry(1), p.getEntry(2), q.getEntry(3), q.getEntry(4), q.getEntry(5));
    }
}
