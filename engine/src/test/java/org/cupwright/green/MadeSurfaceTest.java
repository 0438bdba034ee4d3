package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MadeSurfaceTest {
    private static void assertJet(Surface surface, double east, double north, double... expected) {
        Jet jet = new Jet();
        surface.at(east, north, jet);
        assertThat(new double[] {jet.z, jet.zx, jet.zy, jet.zxx, jet.zxy, jet.zyy})
                .containsExactly(expected, within(1e-12));
    }

    @Test
    void aPlaneHasItsSlopesAndNoBends() {
        assertJet(new MadeSurface(5, 0.02, -0.03, List.of(), List.of()), 10, 100, 2.2, 0.02, -0.03, 0, 0, 0);
        assertJet(MadeSurface.plane(0.02, -0.03), 10, 100, -2.8, 0.02, -0.03, 0, 0, 0);
    }

    /** Two metres east and one south of a bell 10 cm high and 2 m wide it is as high as e to the −5/8 says. */
    @Test
    void aBellHasTheDerivativesOfTheExponential() {
        MadeSurface bell = new MadeSurface(0, 0.01, 0, List.of(new MadeSurface.Bump(1, 2, 0.1, 2)), List.of());
        double near = 0.1 * Math.exp(-5.0 / 8);
        assertJet(bell, 3, 1, 0.03 + near, 0.01 - near / 2, near / 4, 0, -near / 8, -0.1875 * near);
        double far = 0.1 * Math.exp(-17.0 / 8);
        assertJet(bell, 5, 3, 0.05 + far, 0.01 - far, -far / 4, 0.75 * far, far / 4, -0.1875 * far);
    }

    /** A step of 20 cm over 2 m towards 0.6, 0.8: half a metre past its middle it is an eighth of a turn on. */
    @Test
    void aTierRisesByHalfACosineAndIsLevelOnEitherSide() {
        MadeSurface tier = MadeSurface.plane(0, 0).withTier(new MadeSurface.Tier(10, 20, 0.6, 0.8, 0.2, 2));
        double slope = 0.1 * Math.PI / 2 * Math.sqrt(0.5);
        double bend = -0.1 * Math.PI * Math.PI / 4 * Math.sqrt(0.5);
        double height = 0.1 * (1 + Math.sqrt(0.5));
        assertJet(tier, 10.3, 20.4, height, 0.6 * slope, 0.8 * slope, 0.36 * bend, 0.48 * bend, 0.64 * bend);
        assertJet(tier, 10, 20, 0.1, 0.6 * 0.05 * Math.PI, 0.8 * 0.05 * Math.PI, 0, 0, 0);
        assertJet(tier, 11.2, 21.6, 0.2, 0, 0, 0, 0, 0);
        assertJet(tier, 8.8, 18.4, 0, 0, 0, 0, 0, 0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aGentleSurfaceKeepsToWhatIsSaidOfIt(long seed) {
        MadeSurface surface = MadeSurface.gentle(seed, 10);
        assertThat(Math.hypot(surface.planeEast(), surface.planeNorth())).isBetween(1e-6, 0.03);
        assertThat(surface.bumps()).hasSize(6).allSatisfy(bump -> {
            assertThat(Math.max(Math.abs(bump.east()), Math.abs(bump.north()))).isLessThanOrEqualTo(10);
            assertThat(Math.abs(bump.height())).isLessThanOrEqualTo(0.12);
            assertThat(bump.width()).isBetween(3.0, 7.0);
        });
        assertThat(surface).isEqualTo(MadeSurface.gentle(seed, 10));
    }
}
