package org.cupwright.roll;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.green.MadeSurface;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/**
 * The steps converge as a fourth-order rule should, measured at a fixed time well before the stop, on a smooth
 * surface.
 */
class BallRollerConvergenceTest {
    private static final MadeSurface BUMPY = new MadeSurface(
            0,
            0.02,
            -0.01,
            List.of(new MadeSurface.Bump(1.5, 1, 0.03, 0.8), new MadeSurface.Bump(0.6, -0.4, -0.04, 1)),
            List.of());

    /** A share this large leaves all steps to the step length. */
    private static final double BY_LENGTH_ALONE = 0.99;

    private static final int HEADINGS = 24;

    @Test
    void halvingTheStepDividesTheErrorBySixteen() {
        double previous = rootMeanSquareError(0.2);
        for (double stepMetres = 0.1; stepMetres > 0.02; stepMetres /= 2) {
            double error = rootMeanSquareError(stepMetres);
            double order = Math.log(previous / error) / Math.log(2);
            System.out.printf("roll steps of %.3f m: error %.2e m, order %.2f%n", stepMetres, error, order);
            assertThat(order)
                    .as("order at steps of %s m, error %s m", stepMetres, error)
                    .isGreaterThanOrEqualTo(3.8);
            previous = error;
        }
    }

    /** Over headings all round: of a single putt, leading terms of the error may cancel at some step. */
    private static double rootMeanSquareError(double stepMetres) {
        double sum = 0;
        for (int i = 0; i < HEADINGS; i++) {
            double turn = 2 * Math.PI * i / HEADINGS;
            RollState exact = afterOneSecond(0.004, turn);
            RollState rolled = afterOneSecond(stepMetres, turn);
            double error = Math.hypot(rolled.east - exact.east, rolled.north - exact.north);
            sum += error * error;
        }
        return Math.sqrt(sum / HEADINGS);
    }

    private static RollState afterOneSecond(double stepMetres, double turn) {
        RollSteps steps = new RollSteps(stepMetres, BY_LENGTH_ALONE, 1e-4);
        BallRoller roller = new BallRoller(BUMPY, new GreenSpeed(10), Edge.NONE, steps);
        RollState state = BallAtTime.after(1, roller, StrictMath.sin(turn), StrictMath.cos(turn), 2);
        assertThat(state.end).isNull();
        return state;
    }
}
