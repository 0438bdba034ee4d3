package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.green.Jet;
import org.cupwright.green.MadeSurface;
import org.cupwright.roll.BallAtTime;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Edge;
import org.cupwright.roll.RollState;
import org.cupwright.roll.RollSteps;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/**
 * A putt over a bump, z = 0.02x + 0.03·exp(−((x−1.5)²+(y−1)²)/1.28), S 10, from (0, 0) at 1.9 m/s on the map, 30° from
 * x towards y: derived from the full equations with a Dormand–Prince 8(5,3) integrator at 1e-12.
 */
class CurvedRollPublishedTest {
    private static final MadeSurface BUMP =
            new MadeSurface(0, 0.02, 0, List.of(new MadeSurface.Bump(1.5, 1, 0.03, 0.8)), List.of());
    private static final GreenSpeed TEN_FEET = new GreenSpeed(10);

    /** Derived; with steps of 20 mm to the last but one printed digit. */
    @Test
    void placeAfterOneAndAHalfSeconds() {
        RollSteps fine = new RollSteps(0.02, 0.1, 1e-4);

        RollState state =
                BallAtTime.after(1.5, new BallRoller(BUMP, TEN_FEET, Edge.NONE, fine), east(), north(), launch());

        assertThat(state.end).isNull();
        assertThat(state.seconds).isEqualTo(1.5);
        assertThat(state.east).isCloseTo(1.68562773, within(2e-8));
        assertThat(state.north).isCloseTo(1.03038196, within(2e-8));
    }

    /** Derived; at the standard steps to a tenth of a millimetre and of a millisecond. */
    @Test
    void stop() {
        RollState state = new RollState();

        new BallRoller(BUMP, TEN_FEET).stopOf(0, 0, east(), north(), launch(), state);

        assertThat(state.seconds).isCloseTo(2.969591, within(1e-4));
        assertThat(state.east).isCloseTo(2.122258, within(1e-4));
        assertThat(state.north).isCloseTo(1.358790, within(1e-4));
    }

    private static double east() {
        return StrictMath.cos(Math.toRadians(30));
    }

    private static double north() {
        return StrictMath.sin(Math.toRadians(30));
    }

    /** 1.9 m/s on the map, along the ground. */
    private static double launch() {
        Jet jet = new Jet();
        BUMP.at(0, 0, jet);
        double climb = jet.zx * east() + jet.zy * north();
        return 1.9 * Math.sqrt(1 + climb * climb);
    }
}
