package org.cupwright.green.spline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.cupwright.green.Jet;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Invented splines with random coefficients. */
class PolynomialSurfaceTest {
    private static final KnotGrid GRID = KnotGrid.covering(10, 20, 14, 23, 0.5);

    private final double[] coefficients =
            new Random(Suite.seed()).doubles(GRID.coefficients() + 3).toArray();
    private final PolynomialSurface surface = new PolynomialSurface(GRID, coefficients, 100);

    private Jet at(double east, double north) {
        Jet jet = new Jet();
        surface.at(east, north, jet);
        return jet;
    }

    /** The same heights as the sum of splines: the conversion is exact. */
    @Test
    void thePolynomialsAreTheSpline() {
        double[] east = new double[4];
        double[] north = new double[4];
        for (double x = 0.07; x < 8; x += 0.37) {
            for (double y = 0.03; y < 6; y += 0.41) {
                CubicBasis.values(x - Math.floor(x), east);
                CubicBasis.values(y - Math.floor(y), north);
                double sum = 100;
                for (int a = 0; a < 16; a++) {
                    int index = GRID.index((int) x + a / 4, (int) y + a % 4);
                    sum += east[a / 4] * north[a % 4] * coefficients[index];
                }
                assertThat(at(10 + x / 2, 20 + y / 2).z).isCloseTo(sum, within(1e-12));
                assertThat(surface.heightAboveDatum(10 + x / 2, 20 + y / 2)).isCloseTo(sum - 100, within(1e-12));
            }
        }
    }

    /** Central differences over 0.1 mm, inside, on either side of the edge, and beyond the corners. */
    @Test
    void derivativesAreThoseOfTheHeight() {
        double step = 1e-4;
        double[][] places = {{11.23, 21.37}, {9.2, 22.1}, {15.5, 20.9}, {12.2, 25.3}, {13.1, 18.8}, {8, 26}, {16, 17}};
        for (double[] place : places) {
            double x = place[0];
            double y = place[1];
            Jet jet = at(x, y);
            assertThat(jet.zx).isCloseTo((at(x + step, y).z - at(x - step, y).z) / (2 * step), within(1e-6));
            assertThat(jet.zy).isCloseTo((at(x, y + step).z - at(x, y - step).z) / (2 * step), within(1e-6));
            assertThat(jet.zxx).isCloseTo((at(x + step, y).zx - at(x - step, y).zx) / (2 * step), within(1e-5));
            assertThat(jet.zxy).isCloseTo((at(x, y + step).zx - at(x, y - step).zx) / (2 * step), within(1e-5));
            assertThat(jet.zyy).isCloseTo((at(x, y + step).zy - at(x, y - step).zy) / (2 * step), within(1e-5));
        }
    }

    @Test
    void heightSlopeAndInsideAlsoBendAreContinuousAcrossKnots() {
        for (double x : new double[] {10.5, 12, 13.5}) {
            Jet left = at(x - 1e-9, 21.2);
            Jet right = at(x + 1e-9, 21.2);
            assertThat(right.z).isCloseTo(left.z, within(1e-7));
            assertThat(right.zx).isCloseTo(left.zx, within(1e-6));
            assertThat(right.zxx).isCloseTo(left.zxx, within(1e-5));
        }
    }

    @Test
    void outsideTheSurfaceGoesOnStraight() {
        for (double x : new double[] {10, 14}) {
            Jet inside = at(x == 10 ? x + 1e-9 : x - 1e-9, 21.2);
            double out = x == 10 ? -3 : 3;
            assertThat(at(x + out, 21.2).z).isCloseTo(inside.z + out * inside.zx, within(1e-6));
            assertThat(at(x + out, 21.2).zx).isCloseTo(inside.zx, within(1e-6));
            assertThat(at(x + out, 21.2).zxx).isZero();
        }
        assertThat(at(-1000, -1000).z).isFinite();
    }
}
