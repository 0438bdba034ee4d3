package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.cupwright.green.Jet;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Suite;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The banded spline against {@link DenseSpline}, which shares no code with it, on a patch of 4 × 3 m of invented
 * ground.
 */
class SurveySplineAgainstReferenceTest {
    private static final double WIDTH = 4;
    private static final double DEPTH = 3;
    private static final double SIGMA = 0.01;
    private static final double LAMBDA = 0.7;

    private final MadeSurface ground =
            MadeSurface.gentle(Suite.seed(), 3).withTier(new MadeSurface.Tier(2, 1.5, 0.6, 0.8, 0.1, 2));
    private final SurveyPoints points = new MadeSurvey(ground, 0, 0, WIDTH, DEPTH, 12, SIGMA, Suite.seed()).points();
    private final KnotGrid grid = KnotGrid.covering(0, 0, WIDTH, DEPTH, 0.5);
    private final DenseSpline dense = new DenseSpline(0, 0, 0.5, 8, 6, points);
    private final NormalEquations equations = equations(grid);

    private NormalEquations equations(KnotGrid knots) {
        boolean[] all = new boolean[points.count()];
        Arrays.fill(all, true);
        return new NormalEquations(knots, points, all, 0);
    }

    /** To a micrometre: the ridge of 1e-7 points is in the banded equations only. */
    @Test
    void theFittedSurfaceIsTheDenseOne() {
        RealVector coefficients = dense.coefficients(LAMBDA);
        FittedSpline fitted = new FittedSpline(equations, LAMBDA);
        PolynomialSurface surface = new PolynomialSurface(grid, fitted.coefficients, 0);
        Jet jet = new Jet();
        for (double east = 0.05; east < WIDTH; east += 0.31) {
            for (double north = 0.05; north < DEPTH; north += 0.27) {
                surface.at(east, north, jet);
                assertThat(jet.z)
                        .as("seed %d at %s, %s", Suite.seed(), east, north)
                        .isCloseTo(dense.basis(east, north).dotProduct(coefficients), within(1e-6));
            }
        }
    }

    @Test
    void theRestrictedLikelihoodIsTheMixedModelsUpToAConstant() {
        RestrictedLikelihood likelihood = new RestrictedLikelihood(equations);
        double offset = likelihood.at(0) - dense.restricted(1);
        for (double lnLambda : new double[] {-4, -1, 2, 5}) {
            assertThat(likelihood.at(lnLambda) - dense.restricted(Math.exp(lnLambda)))
                    .as("seed %d, ln λ %s", Suite.seed(), lnLambda)
                    .isCloseTo(offset, within(0.02));
        }
    }

    @Test
    void thePenaltyFoundIsTheBestOfAFineList() {
        RestrictedLikelihood likelihood = new RestrictedLikelihood(equations);
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (double lnLambda = -8; lnLambda <= 8; lnLambda += 0.1) {
            double value = dense.restricted(Math.exp(lnLambda));
            best = value < least ? lnLambda : best;
            least = Math.min(least, value);
        }
        assertThat(likelihood.best()).as("seed %d", Suite.seed()).isCloseTo(best, within(0.15));
        assertThat(likelihood.bestNear(best + 2.3)).isCloseTo(best, within(0.15));
    }

    @Test
    void effectiveParametersAreTheTraceOfTheSmoother() {
        FittedSpline fitted = new FittedSpline(equations, LAMBDA);
        RealMatrix smoother = dense.design.multiply(dense.inverse(LAMBDA)).multiply(dense.design.transpose());

        assertThat(fitted.effectiveParameters(fitted.inverse(HeightFunctionals.overDisc(0.91))))
                .isCloseTo(smoother.getTrace(), within(1e-4));
    }

    @Test
    void leveragesAreTheEntriesOfTheSmoother() {
        FittedSpline fitted = new FittedSpline(equations, LAMBDA);
        RealMatrix smoother = dense.design.multiply(dense.inverse(LAMBDA)).multiply(dense.design.transpose());
        Leverages leverages = new Leverages(equations, fitted.inverse(HeightFunctionals.overDisc(0.91)), 4);
        int compared = 0;
        PointBasis basis = equations.basis;
        for (int cell = 0; cell < basis.cells(); cell += 3) {
            for (int one = basis.firsts[cell]; one < basis.firsts[cell + 1]; one++) {
                leverages.about(cell, one);
                for (int otherCell = 0; otherCell < basis.cells(); otherCell++) {
                    for (int other = basis.firsts[otherCell];
                            leverages.reaches(otherCell) && other < basis.firsts[otherCell + 1];
                            other++) {
                        compared++;
                        int point = basis.order[one];
                        int neighbour = basis.order[other];
                        assertThat(leverages.with(otherCell, other))
                                .as("points %d and %d, seed %d", point, neighbour, Suite.seed())
                                .isCloseTo(smoother.getEntry(point, neighbour), within(1e-6));
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(points.count() * points.count() / 20);
    }

    /** Weights of the plane and the quadratic by a dense least-squares solve over the same heights. */
    private double[][] covarianceByHand(double east, double north, double radius, double lambda) {
        HeightFunctionals disc = HeightFunctionals.overDisc(radius);
        RealVector[] rows = new RealVector[5];
        for (int row = 0; row < 5; row++) {
            rows[row] = dense.basis(0, 0).mapMultiply(0);
            for (int i = 0; i < disc.east.length; i++) {
                RealVector at = dense.basis(east + disc.east[i], north + disc.north[i]);
                rows[row] = rows[row].add(at.mapMultiply(disc.weights[row][i]));
            }
        }
        RealMatrix inverse = dense.inverse(lambda);
        double[][] covariance = new double[5][5];
        for (int a = 0; a < 5; a++) {
            for (int b = 0; b < 5; b++) {
                covariance[a][b] = rows[a].dotProduct(inverse.operate(rows[b]));
            }
        }
        return covariance;
    }

    /** Between nodes a twentieth of the variance, so 2.5 % of a standard error. */
    @Test
    void covariancesAtTheNodesAreTheDenseOnesAndBetweenThemNearlySo() {
        FittedSpline fitted = new FittedSpline(equations, LAMBDA);
        HeightFunctionals disc = HeightFunctionals.overDisc(0.91);
        DiscCovariances covariances =
                DiscCovariances.of(grid, disc, fitted.inverse(disc), SIGMA * SIGMA, (east, north) -> true);

        compare(covariances.at(1.75, 1.5), covarianceByHand(1.75, 1.5, 0.91, LAMBDA), 1e-6);
        compare(covariances.at(2.0, 1.25), covarianceByHand(2.0, 1.25, 0.91, LAMBDA), 1e-6);
        compare(covariances.at(1.87, 1.38), covarianceByHand(1.87, 1.38, 0.91, LAMBDA), 0.05);
    }

    /** Each entry to a share of the two standard deviations it belongs to. */
    private static void compare(double[] entries, double[][] byHand, double share) {
        int[][] places = {{0, 0}, {0, 1}, {1, 1}, {2, 2}, {2, 3}, {2, 4}, {3, 3}, {3, 4}, {4, 4}};
        for (int k = 0; k < places.length; k++) {
            int a = places[k][0];
            int b = places[k][1];
            double scale = SIGMA * SIGMA * Math.sqrt(byHand[a][a] * byHand[b][b]);
            assertThat(entries[k])
                    .as("entry %d, seed %d", k, Suite.seed())
                    .isCloseTo(SIGMA * SIGMA * byHand[a][b], within(share * scale));
        }
    }

    /** Two gradients at one spot, which is a node: m + C(C+R)⁻¹(y−m) and C − C(C+R)⁻¹C with 2 × 2 matrices. */
    @Test
    void observationsConditionMeanAndCovarianceAsDenseFormulasSay() {
        double variance = SIGMA * SIGMA;
        FittedSpline fitted = new FittedSpline(equations, LAMBDA);
        SlopeObservation observed = new SlopeObservation(2, 1.5, 0.02, -0.05, 0.001);
        Conditioning conditioning =
                new Conditioning(fitted, variance, new ObservedSlopes(fitted, 0.91, List.of(observed)), List.of());
        HeightFunctionals disc = HeightFunctionals.overDisc(0.91);
        double[] prior = disc.of(new PolynomialSurface(grid, fitted.coefficients, 0), 2, 1.5);
        double[] posterior = disc.of(new PolynomialSurface(grid, conditioning.coefficients, 0), 2, 1.5);
        DiscCovariances covariances = DiscCovariances.of(
                        grid, disc, fitted.inverse(disc), variance, (east, north) -> true)
                .less(conditioning.directions);

        RealMatrix known = new Array2DRowRealMatrix(covarianceByHand(2, 1.5, 0.91, LAMBDA))
                .getSubMatrix(0, 1, 0, 1)
                .scalarMultiply(variance);
        RealMatrix noise = MatrixUtils.createRealIdentityMatrix(2).scalarMultiply(1e-6);
        RealMatrix gain = known.multiply(MatrixUtils.inverse(known.add(noise)));
        RealVector mean = new ArrayRealVector(new double[] {prior[0], prior[1]});
        RealVector shift = gain.operate(new ArrayRealVector(new double[] {0.02, -0.05}).subtract(mean));
        RealMatrix left = known.subtract(gain.multiply(known));
        assertThat(posterior[0]).isCloseTo(prior[0] + shift.getEntry(0), within(1e-9));
        assertThat(posterior[1]).isCloseTo(prior[1] + shift.getEntry(1), within(1e-9));
        assertThat(covariances.at(2, 1.5)[0]).isCloseTo(left.getEntry(0, 0), within(1e-11));
        assertThat(covariances.at(2, 1.5)[1]).isCloseTo(left.getEntry(0, 1), within(1e-11));
        assertThat(covariances.at(2, 1.5)[2]).isCloseTo(left.getEntry(1, 1), within(1e-11));
    }
}
