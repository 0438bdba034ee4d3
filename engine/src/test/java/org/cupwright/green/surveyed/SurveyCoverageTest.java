package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;

/** When a spot counts as surveyed, with a few points about it. */
class SurveyCoverageTest {
    private static final Policy POLICY = Policy.defaults();

    private static SurveyPoints at(double... eastNorth) {
        int count = eastNorth.length / 2;
        return SurveyPoints.scattered(
                IntStream.range(0, count).mapToDouble(i -> eastNorth[2 * i]).toArray(),
                IntStream.range(0, count).mapToDouble(i -> eastNorth[2 * i + 1]).toArray(),
                new double[count]);
    }

    private static boolean isSurveyed(double... eastNorth) {
        SurveyPoints points = at(eastNorth);
        return SurveyCoverage.of(points, POLICY).isSurveyed(new PointIndex(points), 0, 0);
    }

    @Test
    void sixPointsAboutASpotTheNearestHalfAMetreOffShowIt() {
        assertThat(isSurveyed(0.5, 0, -0.5, 0, 0, 0.5, 0, -0.5, 0.6, 0.6, -0.6, -0.6))
                .isTrue();
    }

    @Test
    void fiveWithinADiscAreTooFew() {
        assertThat(isSurveyed(0.5, 0, -0.5, 0, 0, 0.5, 0, -0.5, 0.6, 0.6)).isFalse();
        assertThat(isSurveyed(0.5, 0, -0.5, 0, 0, 0.5, 0, -0.5, 0.6, 0.6, 0.65, 0.65))
                .as("0.92 m off")
                .isFalse();
    }

    @Test
    void inTheMiddleOfAGapNothingIsShown() {
        assertThat(isSurveyed(0.51, 0, -0.51, 0, 0, 0.51, 0, -0.51, 0.6, 0.6, -0.6, -0.6))
                .isFalse();
    }

    /** Three on each side of a line: they spread by what they lie off it, and 0.1365 m is wanted. */
    @Test
    void pointsHardlyOffALineDoNotShowASlope() {
        assertThat(isSurveyed(0.8, 0.14, 0, 0.14, -0.8, 0.14, 0.8, -0.14, 0, -0.14, -0.8, -0.14))
                .isTrue();
        assertThat(isSurveyed(0.8, 0.13, 0, 0.13, -0.8, 0.13, 0.8, -0.13, 0, -0.13, -0.8, -0.13))
                .isFalse();
    }

    @Test
    void pointsCountWithinADiscAndNodesOfAGridWithinCells() {
        SurveyCoverage points = SurveyCoverage.of(at(0, 0), POLICY.with(GroundPolicy.WIDEST_GAP_METRES, 0.8));
        assertThat(points).isEqualTo(new SurveyCoverage(0.91, 6, 0.4));
        assertThat(points.leastSpreadMetres()).isCloseTo(0.1365, within(1e-12));
        assertThat(SurveyCoverage.of(grid(0.5), POLICY)).isEqualTo(new SurveyCoverage(0.91, 6, 0.5));
        SurveyCoverage wide = SurveyCoverage.of(grid(1), POLICY);
        assertThat(wide).isEqualTo(new SurveyCoverage(1.6, 6, 0.75));
        assertThat(wide.leastSpreadMetres()).isCloseTo(0.24, within(1e-12));
    }

    private static SurveyPoints grid(double cell) {
        return SurveyPoints.grid(cell, 0.1, new double[1], new double[1], new double[1]);
    }
}
