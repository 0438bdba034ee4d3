package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Suite;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * What shared errors do to slopes, kept as a few directions, against the full covariance between all points carried
 * through the dense fit: W(B'B+λP)⁻¹B' K B(B'B+λP)⁻¹W'. Invented ground of 4 × 3 m.
 */
class SharedErrorsAgainstReferenceTest {
    private static final double LAMBDA = 0.7;

    private final SurveyPoints points = walked();
    private final KnotGrid grid = KnotGrid.covering(0, 0, 4, 3, 0.5);
    private final DenseSpline dense = new DenseSpline(0, 0, 0.5, 8, 6, points);

    /** In the order of a walk to and fro, half a metre apart. */
    private static SurveyPoints walked() {
        SurveyPoints made =
                new MadeSurvey(MadeSurface.gentle(Suite.seed(), 3), 0, 0, 4, 3, 12, 0.01, Suite.seed()).points();
        return SurveyPoints.scattered(IntStream.range(0, made.count())
                .mapToObj(i -> new SurveyPoint(made.east(i), made.north(i), made.heightMetres(i)))
                .sorted(Comparator.<SurveyPoint>comparingDouble(point -> line(point))
                        .thenComparingDouble(point -> line(point) % 2 == 0 ? point.north() : -point.north()))
                .toList());
    }

    private static double line(SurveyPoint point) {
        return Math.floor(2 * point.east());
    }

    private interface Covariance {
        double of(int one, int other);
    }

    private double[] byHand(Covariance between) {
        int count = points.count();
        RealMatrix covariance = new Array2DRowRealMatrix(count, count);
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                covariance.setEntry(i, j, between.of(i, j));
            }
        }
        RealMatrix smoother = dense.inverse(LAMBDA).multiply(dense.design.transpose());
        RealMatrix ofCoefficients = smoother.multiply(covariance).multiply(smoother.transpose());
        double[] variances = new double[5];
        HeightFunctionals disc = HeightFunctionals.overDisc(0.91);
        for (int row = 0; row < 5; row++) {
            RealVector weights = dense.basis(0, 0).mapMultiply(0);
            for (int i = 0; i < disc.east.length; i++) {
                RealVector at = dense.basis(2 + disc.east[i], 1.5 + disc.north[i]);
                weights = weights.add(at.mapMultiply(disc.weights[row][i]));
            }
            variances[row] = weights.dotProduct(ofCoefficients.operate(weights));
        }
        return variances;
    }

    private double[] byDirections(Sharing sharing) {
        boolean[] all = new boolean[points.count()];
        Arrays.fill(all, true);
        FittedSpline fitted = new FittedSpline(new NormalEquations(grid, points, all, 0), LAMBDA);
        HeightFunctionals disc = HeightFunctionals.overDisc(0.91);
        List<double[]> directions = SharedDirections.of(fitted, sharing);
        double[] entries = DiscCovariances.of(grid, disc, fitted.inverse(disc), 0, (east, north) -> true)
                .plus(directions)
                .at(2, 1.5);
        return new double[] {entries[0], entries[2], entries[3], entries[6], entries[8]};
    }

    /** Slopes to a share of themselves; second derivatives to twice that or so little that no fit would tell. */
    private void compare(Sharing sharing, Covariance between, double share) {
        double[] byHand = byHand(between);
        double[] byDirections = byDirections(sharing);
        for (int k = 0; k < 5; k++) {
            assertThat(Math.sqrt(byDirections[k]))
                    .as("entry %d, %s, seed %d", k, sharing, Suite.seed())
                    .isCloseTo(
                            Math.sqrt(byHand[k]),
                            within(
                                    k < 2
                                            ? share * Math.sqrt(byHand[k])
                                            : Math.max(5e-5, 2 * share * Math.sqrt(byHand[k]))));
        }
    }

    private double apart(int i, int j) {
        return Math.hypot(points.east(i) - points.east(j), points.north(i) - points.north(j));
    }

    @Test
    void errorsSharedOverTheGroundAreCarriedThrough() {
        for (double length : new double[] {2, 3, 10}) {
            Covariance between = (i, j) -> 64e-6 * Math.exp(-Math.pow(apart(i, j) / length, 2) / 2);
            compare(new Sharing(0.008, length, false), between, 0.05);
        }
    }

    /** A slope is off by about σ/ℓ along either axis where the length is far longer than the disc. */
    @Test
    void aLongLengthGivesTheSlopeOfTheField() {
        double[] variances = byDirections(new Sharing(0.008, 3, false));
        assertThat(Math.sqrt(variances[0])).isBetween(0.85 * 0.008 / 3, 0.008 / 3);
        assertThat(Math.sqrt(variances[1])).isBetween(0.85 * 0.008 / 3, 0.008 / 3);
    }

    @Test
    void driftAlongTheWalkIsCarriedThrough() {
        double[] walked = new double[points.count()];
        for (int i = 1; i < walked.length; i++) {
            walked[i] = walked[i - 1] + apart(i - 1, i);
        }
        for (double length : new double[] {20, 60, 200}) {
            Covariance between = (i, j) -> 64e-6 * Math.exp(-Math.abs(walked[i] - walked[j]) / length);
            compare(new Sharing(0.008, length, true), between, 0.06);
        }
    }

    @Test
    void nothingSharedAddsNothing() {
        assertThat(byDirections(Sharing.NONE)).containsOnly(0);
    }
}
