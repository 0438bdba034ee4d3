package org.cupwright.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.MapPoint;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

class PlaneRollTest {
    private static final GreenSpeed TEN_FEET = new GreenSpeed(10);

    /** Straight down, straight up, level, no speed: in tan(ψ/2) two of them would divide by zero. */
    @Test
    void straightAndLevelRollsAreNoSpecialCase() {
        double g = 5.0 / 7.0 * 9.81 / Math.hypot(1, 0.03);
        double rho = TEN_FEET.rollingResistance();

        assertThat(PlaneNumbers.of(0.03, TEN_FEET, 2, 0).down()).isCloseTo(4 / (2 * g * (rho - 0.03)), within(1e-9));
        assertThat(PlaneNumbers.of(0.03, TEN_FEET, 2, 180).down()).isCloseTo(-4 / (2 * g * (rho + 0.03)), within(1e-9));
        assertThat(PlaneNumbers.of(0, TEN_FEET, 1.8288, 90).across()).isCloseTo(3.048, within(1e-9));
        assertThat(PlaneNumbers.of(0.03, TEN_FEET, 0, 90)).isEqualTo(new PlaneNumbers(0, 0, 0, 0, 0, 0));
    }

    @Test
    void mapPathIsWithinItsStatedErrorOnASteepPlane() {
        double slope = 0.075;
        BallRoller roller =
                new BallRoller(MadeSurface.plane(0, slope), TEN_FEET, Edge.NONE, new RollSteps(0.02, 0.02, 1e-5));

        Roll rolled = roller.roll(new MapPoint(0, 0), new Heading(60), 1.8);
        Roll closed =
                PlaneRoll.roll(new PlaneFit(0, slope, 0, 0, 0), TEN_FEET, new MapPoint(0, 0), new Heading(60), 1.8);

        double stated = Math.pow(slope, 4) / 8 * rolled.pathMetres();
        assertThat(closed.pathMetres()).isCloseTo(rolled.pathMetres(), within(stated + 2e-6));
    }

    @Test
    void slopeThatHoldsNoBallIsRefusedWithTheSteepestThatDoes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        PlaneRoll.roll(new PlaneFit(0.08, 0, 0, 0, 0), TEN_FEET, new MapPoint(0, 0), new Heading(0), 1))
                .withMessageContaining("slope of 8.0 %")
                .withMessageContaining("holds one is 7.829");
    }
}
