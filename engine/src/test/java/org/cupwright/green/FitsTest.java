package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Planes and bends with errors that are squares of whole numbers, so that all can be worked out by hand. */
class FitsTest {
    @Test
    void aSlopesErrorIsTakenAlongTheFallLine() {
        PlaneFit plane = new PlaneFit(0.03, 0.04, 25, 10, 50);
        assertThat(plane.slope()).isCloseTo(0.05, within(1e-15));
        assertThat(plane.slopePercent()).isCloseTo(5, within(1e-12));
        // 0.36·25 + 2·0.6·0.8·10 + 0.64·50 = 50.6
        assertThat(plane.slopeStandardError()).isCloseTo(Math.sqrt(50.6), within(1e-12));
        assertThat(plane.componentStandardError(1, 0)).isCloseTo(5, within(1e-12));
        assertThat(plane.componentStandardError(0, 1)).isCloseTo(Math.sqrt(50), within(1e-12));
        // along the mirrored direction the covariance counts against: 9 − 9.6 + 32 = 31.4
        assertThat(plane.componentStandardError(0.6, -0.8)).isCloseTo(Math.sqrt(31.4), within(1e-12));
    }

    @Test
    void onLevelGroundTheLessKnownDirectionCounts() {
        // the greater eigenvalue of (10, 4; 4, 4) is 7 + √(9 + 16) = 12
        assertThat(new PlaneFit(0, 0, 10, 4, 4).slopeStandardError()).isCloseTo(Math.sqrt(12), within(1e-12));
        assertThat(new PlaneFit(0, 0, 10, 4, 4).downhill()).isEmpty();
    }

    @Test
    void theGroundFallsAgainstItsGradient() {
        assertThat(new PlaneFit(0.01, 0, 0, 0, 0).downhill().orElseThrow().degrees())
                .isCloseTo(270, within(1e-9));
        assertThat(new PlaneFit(0, 0.01, 0, 0, 0).downhill().orElseThrow().degrees())
                .isCloseTo(180, within(1e-9));
    }

    /** Over a disc of 0.5 m radius a second derivative of 0.01 1/m changes the slope by one point. */
    @Test
    void aBendAlongADirectionHasTheErrorOfAllThreeNumbers() {
        BendFit bend = new BendFit(
                0.02, 0.005, 0.01, new BendFit.Covariance(0.0001, 0.00002, 0.00003, 0.0004, 0.00005, 0.0009), 0.5);
        BendFit.Change east = bend.along(1, 0);
        assertThat(east.points()).isCloseTo(2, within(1e-12));
        assertThat(east.standardErrorPoints()).isCloseTo(1, within(1e-12));
        BendFit.Change north = bend.along(0, 1);
        assertThat(north.points()).isCloseTo(1, within(1e-12));
        assertThat(north.standardErrorPoints()).isCloseTo(3, within(1e-12));
        // a = 0.36, b = 0.96, c = 0.64: 0.0072 + 0.0048 + 0.0064 = 0.0184
        BendFit.Change between = bend.along(0.6, 0.8);
        assertThat(between.points()).isCloseTo(1.84, within(1e-12));
        // 0.00001296 + 0.00036864 + 0.00036864 + 2·(0.000006912 + 0.000006912 + 0.00003072) = 0.000839328
        assertThat(between.standardErrorPoints()).isCloseTo(100 * Math.sqrt(0.000_839_328), within(1e-9));
    }

    @Test
    void theGreatestBendIsThatOfItsOwnDirection() {
        BendFit.Covariance exact = new BendFit.Covariance(0, 0, 0, 0, 0, 0);
        // eigenvalues of (0.05, 0.02; 0.02, 0.02): 0.035 ± 0.025
        assertThat(new BendFit(0.05, 0.02, 0.02, exact, 0.5).greatest().points())
                .isCloseTo(6, within(1e-9));
        assertThat(new BendFit(-0.05, -0.02, -0.02, exact, 0.5).greatest().points())
                .isCloseTo(-6, within(1e-9));
        assertThat(new BendFit(0.02, 0.02, 0.05, exact, 0.5).greatest().points())
                .isCloseTo(6, within(1e-9));
        assertThat(new BendFit(0.01, 0, -0.03, exact, 0.5).greatest().points()).isCloseTo(-3, within(1e-9));
        assertThat(new BendFit(0.03, 0, -0.01, exact, 0.5).greatest().points()).isCloseTo(3, within(1e-9));
    }
}
