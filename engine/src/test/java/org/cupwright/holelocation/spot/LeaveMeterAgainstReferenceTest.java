package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.policy.Policy;
import org.cupwright.roll.BallRoller;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

/** The coarse steps of the leave against the ball roller's standard ones. */
class LeaveMeterAgainstReferenceTest {
    private static final double TOLERANCE_METRES = 0.002;

    @Test
    void leavesUpToAMetreAreWithinTwoMillimetres() {
        int surfaces = Suite.count("leaves against standard steps", 200, 20);
        PuttingArea area = new PuttingArea(Hole.of("1", Shapes.circle(0, 0, 14)));
        for (int i = 0; i < surfaces; i++) {
            long seed = Suite.seed() * 1000 + i;
            Random random = new Random(seed);
            MadeSurface surface = MadeSurface.gentle(seed, 10);
            GreenSpeed speed = new GreenSpeed(8 + 5 * random.nextDouble());
            LeaveMeter meter = new LeaveMeter(Optional.of(surface), area, speed, Policy.defaults());
            MapPoint spot = new MapPoint(6 * random.nextDouble() - 3, 6 * random.nextDouble() - 3);
            PlaneFit plane = ModelGround.exact(surface).planeAt(spot).orElseThrow();
            Leave leave = meter.at(spot, plane);
            double reference = worst(surface, speed, spot);
            assertThat(leave.headings()).isEqualTo(36);
            if (reference < 1) {
                assertThat(Math.abs(leave.worstMetres() - reference))
                        .as("seed %d, spot %s: %s against %s", seed, spot, leave.worstMetres(), reference)
                        .isLessThan(TOLERANCE_METRES);
            }
        }
    }

    private static double worst(MadeSurface surface, GreenSpeed speed, MapPoint spot) {
        BallRoller roller = new BallRoller(surface, speed);
        double launch = LeaveMeter.launchMetresPerSecond(speed, 0.30);
        double worst = 0;
        for (int degrees = 0; degrees < 360; degrees += 10) {
            MapPoint stop = roller.roll(spot, new Heading(degrees), launch).stop();
            worst = Math.max(worst, spot.distanceMetres(stop));
        }
        return worst;
    }
}
