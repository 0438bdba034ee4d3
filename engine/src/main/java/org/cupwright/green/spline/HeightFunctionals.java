package org.cupwright.green.spline;

/**
 * Quantities that are weighted sums of a surface's heights at fixed offsets from a spot: the gradient of the
 * least-squares plane over a disc, the second derivatives of the least-squares quadratic, a height difference.
 *
 * <p>Over a disc the fit is to the heights at {@value #RINGS} rings of {@value #SPOKES} points, each standing for the
 * same area: planes and quadratics are met exactly, and a spline with knots half a metre apart to a thousandth of the
 * weights.
 */
final class HeightFunctionals {
    /** Rows of {@link #overDisc}: the plane's gradient, then the quadratic's second derivatives. */
    static final int GRADIENT_EAST = 0;

    static final int GRADIENT_NORTH = 1;
    static final int EAST_2 = 2;
    static final int EAST_NORTH = 3;
    static final int NORTH_2 = 4;

    private static final int RINGS = 12;
    private static final int SPOKES = 16;

    final double reachMetres;
    final double[] east;
    final double[] north;
    /** One row a quantity, one column an offset. */
    final double[][] weights;

    private HeightFunctionals(double reachMetres, double[] east, double[] north, double[][] weights) {
        this.reachMetres = reachMetres;
        this.east = east;
        this.north = north;
        this.weights = weights;
    }

    /**
     * The gradient (east, north) of the plane, and the second derivatives (east², east·north, north²) of the
     * quadratic.
     */
    static HeightFunctionals overDisc(double radiusMetres) {
        int count = RINGS * SPOKES;
        double[] east = new double[count];
        double[] north = new double[count];
        for (int i = 0; i < count; i++) {
            int ring = i / SPOKES;
            int spoke = i % SPOKES;
            double distance = radiusMetres * Math.sqrt((ring + 0.5) / RINGS);
            double turn = 2 * Math.PI * (spoke + (ring % 2 == 0 ? 0 : 0.5)) / SPOKES;
            east[i] = distance * StrictMath.cos(turn);
            north[i] = distance * StrictMath.sin(turn);
        }
        return new HeightFunctionals(radiusMetres, east, north, leastSquares(east, north));
    }

    /**
     * On points this even about the centre the polynomials x, y, xy, x²−y² and r² less its mean are orthogonal, so each
     * coefficient is a sum of its own.
     */
    private static double[][] leastSquares(double[] x, double[] y) {
        int count = x.length;
        double[][] basis = new double[5][count];
        double meanSquare = 0;
        for (int i = 0; i < count; i++) {
            meanSquare += (x[i] * x[i] + y[i] * y[i]) / count;
        }
        for (int i = 0; i < count; i++) {
            basis[0][i] = x[i];
            basis[1][i] = y[i];
            basis[2][i] = x[i] * y[i];
            basis[3][i] = x[i] * x[i] - y[i] * y[i];
            basis[4][i] = x[i] * x[i] + y[i] * y[i] - meanSquare;
        }
        for (double[] row : basis) {
            divideBySquares(row);
        }
        double[][] weights = {basis[0], basis[1], new double[count], basis[2], new double[count]};
        for (int i = 0; i < count; i++) {
            weights[EAST_2][i] = 2 * (basis[4][i] + basis[3][i]);
            weights[NORTH_2][i] = 2 * (basis[4][i] - basis[3][i]);
        }
        return weights;
    }

    private static void divideBySquares(double[] row) {
        double squares = 0;
        for (double value : row) {
            squares += value * value;
        }
        for (int i = 0; i < row.length; i++) {
            row[i] /= squares;
        }
    }

    /** The height differences between two points so far apart, towards east and towards north. */
    static HeightFunctionals differences(double apartMetres) {
        double half = apartMetres / 2;
        return new HeightFunctionals(
                half, new double[] {-half, half, 0, 0}, new double[] {0, 0, -half, half}, new double[][] {
                    {-1, 1, 0, 0}, {0, 0, -1, 1}
                });
    }

    int rows() {
        return weights.length;
    }

    /** All quantities of a surface at a spot. */
    double[] of(PolynomialSurface surface, double atEast, double atNorth) {
        double[] out = new double[weights.length];
        for (int i = 0; i < east.length; i++) {
            double height = surface.heightAboveDatum(atEast + east[i], atNorth + north[i]);
            for (int row = 0; row < out.length; row++) {
                out[row] += weights[row][i] * height;
            }
        }
        return out;
    }

    /** How many coefficients apart, in one direction, the first and the last can be that a quantity depends on. */
    int coefficientsApart(double spacingMetres) {
        return (int) Math.ceil(2 * reachMetres / spacingMetres) + 3;
    }
}
