package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.Surface;
import org.cupwright.policy.Policy;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A square pyramid hollowed out of the ground: it rises 2 cm a metre from its middle to a rim 1 m away, of which every
 * spot lies on the lattice, and falls 4 cm a metre beyond.
 */
class HollowDepthsTest {
    private static final double BASE = 100;

    private static double height(double east, double north) {
        double out = Math.max(Math.abs(east), Math.abs(north));
        return BASE + (out <= 1 ? 0.02 * out : 0.02 - 0.04 * (out - 1));
    }

    /** The hollow, its rim lowered to a height above the middle within a tenth of a metre of one spot. */
    private static HollowDepths notched(double east, double north, double heightMetres) {
        Surface surface = (x, y, out) -> {
            boolean notch = Math.hypot(x - east, y - north) < 0.1;
            out.z = notch ? BASE + heightMetres : height(x, y);
            out.zx = 0;
            out.zy = 0;
            out.zxx = 0;
            out.zxy = 0;
            out.zyy = 0;
        };
        Green green = new Green(Hole.of("1", Shapes.rectangle(-2, -3, 2.5, 3)), ModelGround.exact(surface));
        SpotGrid grid = GreenMeasurement.measure(green, new GreenSpeed(10), Policy.defaults())
                .grid();
        return new HollowDepths(surface, grid);
    }

    private static double metres(HollowDepths hollow, double east, double north) {
        return hollow.metresAt(new MapPoint(east, north));
    }

    @Test
    void waterStandsUpToTheRim() {
        HollowDepths whole = notched(99, 99, 0);
        assertThat(metres(whole, 0, 0)).isCloseTo(0.02, within(1e-12));
        assertThat(metres(whole, 0.5, -0.25)).isCloseTo(0.01, within(1e-12));
        assertThat(metres(whole, -0.6, 0.3)).isCloseTo(0.008, within(1e-12));
        assertThat(metres(whole, 1, 0.5)).isZero();
        assertThat(metres(whole, 1.5, 0)).isZero();
        assertThat(metres(whole, 0, -3)).isZero();
        assertThat(metres(whole, 40, 0)).isZero();
    }

    /** From the spots beside a gap of 1 cm in the rim, at 1.5 cm themselves, water runs off at once. */
    @ParameterizedTest
    @CsvSource({"1, 0", "-1, 0", "0, 1", "0, -1", "1, 1", "1, -1", "-1, 1", "-1, -1", "1, 0.5", "-0.25, -1"})
    void throughAGapInTheRimWaterRunsOff(double east, double north) {
        HollowDepths hollow = notched(east, north, 0.01);
        assertThat(metres(hollow, 0, 0)).isCloseTo(0.015, within(1e-12));
        assertThat(metres(hollow, 0.25, 0.5)).isCloseTo(0.005, within(1e-12));
        assertThat(metres(hollow, east, north)).isZero();
    }

    @Test
    void aGapHalfUpTheRimHoldsTheWaterHalfWayUp() {
        HollowDepths hollow = notched(1, 0, 0.018);
        assertThat(metres(hollow, 0, 0)).isCloseTo(0.018, within(1e-12));
    }
}
