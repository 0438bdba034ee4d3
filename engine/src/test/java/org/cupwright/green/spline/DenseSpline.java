package org.cupwright.green.spline;

import org.cupwright.green.SurveyPoints;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The slow reference: the same statistical model with dense matrices, splines by the recursion of Cox and de Boor, the
 * penalty from difference matrices, and the restricted likelihood of the mixed model written out with the covariance of
 * the heights.
 */
final class DenseSpline {
    final RealMatrix design;
    final RealMatrix penalty;
    final RealVector heights;

    /** The heights that the penalty leaves free, and B P⁺ B', the covariance of all others for a penalty of 1. */
    private final RealMatrix free;

    private final RealMatrix priorCovariance;

    private final double west;
    private final double south;
    private final double spacing;
    private final int east;
    private final int north;

    DenseSpline(double west, double south, double spacing, int cellsEast, int cellsNorth, SurveyPoints points) {
        this.west = west;
        this.south = south;
        this.spacing = spacing;
        this.east = cellsEast + 3;
        this.north = cellsNorth + 3;
        this.design = new Array2DRowRealMatrix(points.count(), east * north);
        this.heights = new ArrayRealVector(points.count());
        for (int i = 0; i < points.count(); i++) {
            design.setRowVector(i, basis(points.east(i), points.north(i)));
            heights.setEntry(i, points.heightMetres(i));
        }
        this.penalty = kronecker(differences(east), MatrixUtils.createRealIdentityMatrix(north))
                .add(kronecker(MatrixUtils.createRealIdentityMatrix(east), differences(north)));
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(penalty);
        RealMatrix directions = design.multiply(eigen.getV());
        int bound = penalty.getRowDimension() - 4;
        this.free = directions.getSubMatrix(0, points.count() - 1, bound, bound + 3);
        RealMatrix scaled = directions.getSubMatrix(0, points.count() - 1, 0, bound - 1);
        for (int k = 0; k < bound; k++) {
            scaled.setColumnVector(k, scaled.getColumnVector(k).mapDivide(Math.sqrt(eigen.getEigenvalue(k))));
        }
        this.priorCovariance = scaled.multiply(scaled.transpose());
    }

    /** All splines at a point, towards north first. */
    RealVector basis(double x, double y) {
        RealVector row = new ArrayRealVector(east * north);
        for (int i = 0; i < east; i++) {
            for (int j = 0; j < north; j++) {
                double value = coxDeBoor(3, west + (i - 3) * spacing, x) * coxDeBoor(3, south + (j - 3) * spacing, y);
                row.setEntry(i * north + j, value);
            }
        }
        return row;
    }

    private double coxDeBoor(int degree, double start, double x) {
        if (degree == 0) {
            return x >= start && x < start + spacing ? 1 : 0;
        }
        double length = degree * spacing;
        return (x - start) / length * coxDeBoor(degree - 1, start, x)
                + (start + length + spacing - x) / length * coxDeBoor(degree - 1, start + spacing, x);
    }

    private static RealMatrix differences(int count) {
        RealMatrix differences = new Array2DRowRealMatrix(count - 2, count);
        for (int i = 0; i < count - 2; i++) {
            differences.setEntry(i, i, 1);
            differences.setEntry(i, i + 1, -2);
            differences.setEntry(i, i + 2, 1);
        }
        return differences.transpose().multiply(differences);
    }

    private static RealMatrix kronecker(RealMatrix a, RealMatrix b) {
        int rows = b.getRowDimension();
        RealMatrix product = new Array2DRowRealMatrix(a.getRowDimension() * rows, a.getColumnDimension() * rows);
        for (int i = 0; i < a.getRowDimension(); i++) {
            for (int j = 0; j < a.getColumnDimension(); j++) {
                product.setSubMatrix(b.scalarMultiply(a.getEntry(i, j)).getData(), i * rows, j * rows);
            }
        }
        return product;
    }

    /** (B'B+λP)⁻¹. */
    RealMatrix inverse(double lambda) {
        RealMatrix matrix = design.transpose().multiply(design).add(penalty.scalarMultiply(lambda));
        return cholesky(matrix).getSolver().getInverse();
    }

    RealVector coefficients(double lambda) {
        return inverse(lambda).operate(design.transpose().operate(heights));
    }

    /**
     * Minus twice the restricted log likelihood with σ² profiled out: heights are normal with mean in the space the
     * penalty leaves free and covariance V = σ²(I + B P⁺ B'/λ), restricted to contrasts that are blind to the mean.
     */
    double restricted(double lambda) {
        RealMatrix covariance = MatrixUtils.createRealIdentityMatrix(design.getRowDimension())
                .add(priorCovariance.scalarMultiply(1 / lambda));
        CholeskyDecomposition whole = cholesky(covariance);
        RealMatrix weight = whole.getSolver().getInverse();
        RealMatrix information = free.transpose().multiply(weight).multiply(free);
        CholeskyDecomposition inner = cholesky(information);
        RealVector best = inner.getSolver().solve(free.transpose().operate(weight.operate(heights)));
        RealVector rest = heights.subtract(free.operate(best));
        int contrasts = design.getRowDimension() - 4;
        return contrasts * Math.log(rest.dotProduct(weight.operate(rest)))
                + logDeterminant(whole)
                + logDeterminant(inner);
    }

    /** Products are symmetric only to rounding, the decomposition wants them so exactly. */
    private static CholeskyDecomposition cholesky(RealMatrix nearlySymmetric) {
        RealMatrix symmetric = nearlySymmetric.add(nearlySymmetric.transpose()).scalarMultiply(0.5);
        return new CholeskyDecomposition(symmetric);
    }

    private static double logDeterminant(CholeskyDecomposition factor) {
        double sum = 0;
        for (int i = 0; i < factor.getL().getRowDimension(); i++) {
            sum += 2 * Math.log(factor.getL().getEntry(i, i));
        }
        return sum;
    }
}
