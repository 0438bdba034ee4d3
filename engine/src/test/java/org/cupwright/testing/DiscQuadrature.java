package org.cupwright.testing;

import org.cupwright.course.MapPoint;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/**
 * Least-squares plane and quadratic through a surface over a disc, by fixed nodes: four rings (Gauss points for the
 * area) of twelve each.
 *
 * <p>The nodes are symmetrical, so slope and change of slope do not mix; polynomials up to the fourth degree are
 * integrated exactly.
 */
public final class DiscQuadrature {
    /** Gauss–Legendre points on 0…1 of the squared radius, which weighs rings by area. */
    private static final double[] GAUSS = {
        0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263
    };

    private static final double[] GAUSS_WEIGHT = {
        0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269
    };

    private static final int ROUND = 12;

    private final double radiusMetres;
    private final double[] dx;
    private final double[] dy;

    /** For each node: its part in rise east, rise north, and the three second derivatives. */
    private final double[][] parts;

    public DiscQuadrature(double radiusMetres) {
        this.radiusMetres = radiusMetres;
        int nodes = GAUSS.length * ROUND;
        dx = new double[nodes];
        dy = new double[nodes];
        parts = new double[5][nodes];
        double r2 = radiusMetres * radiusMetres;
        for (int ring = 0; ring < GAUSS.length; ring++) {
            double radius = radiusMetres * Math.sqrt(GAUSS[ring]);
            double weight = GAUSS_WEIGHT[ring] / ROUND;
            for (int k = 0; k < ROUND; k++) {
                int i = ring * ROUND + k;
                double turn = 2 * Math.PI * (k + 0.5 * (ring % 2)) / ROUND;
                dx[i] = radius * StrictMath.cos(turn);
                dy[i] = radius * StrictMath.sin(turn);
                setParts(i, weight, r2);
            }
        }
    }

    /** Moments of a unit disc, mean x² = 1/4, x⁴ = 1/8, x²y² = 1/24, solve the normal equations in closed form. */
    private void setParts(int i, double weight, double r2) {
        double x = dx[i];
        double y = dy[i];
        parts[0][i] = weight * 4 * x / r2;
        parts[1][i] = weight * 4 * y / r2;
        double round = 24 * ((x * x + y * y) / r2 - 0.5) / r2;
        double saddle = 12 * (x * x - y * y) / (r2 * r2);
        parts[2][i] = weight * (round + saddle);
        parts[3][i] = weight * 24 * x * y / (r2 * r2);
        parts[4][i] = weight * (round - saddle);
    }

    public double radiusMetres() {
        return radiusMetres;
    }

    public int nodes() {
        return dx.length;
    }

    public double dx(int node) {
        return dx[node];
    }

    public double dy(int node) {
        return dy[node];
    }

    /**
     * How much a node's height counts.
     *
     * @param functional 0 rise east, 1 rise north, 2 second derivative east, 3 mixed, 4 north
     */
    public double part(int functional, int node) {
        return parts[functional][node];
    }

    /** The five functionals of a surface about a point. */
    public double[] of(Surface surface, MapPoint at) {
        double[] sums = new double[5];
        Jet jet = new Jet();
        surface.at(at.east(), at.north(), jet);
        double middle = jet.z;
        for (int i = 0; i < dx.length; i++) {
            surface.at(at.east() + dx[i], at.north() + dy[i], jet);
            for (int f = 0; f < 5; f++) {
                sums[f] += parts[f][i] * (jet.z - middle);
            }
        }
        return sums;
    }
}
