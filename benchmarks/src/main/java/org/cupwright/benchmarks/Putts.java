package org.cupwright.benchmarks;

import java.util.Random;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.ReferenceRoll;
import org.cupwright.roll.RollState;

/**
 * Typical putts, seeded: from places within 8 m of the origin, in all directions, at 1.5–2.2 m/s (2 to 4.5 m on the
 * level at 10 ft).
 */
final class Putts {
    private final double[] east;
    private final double[] north;
    private final double[] unitEast;
    private final double[] unitNorth;
    private final double[] launch;

    Putts(long seed, int count) {
        Random random = new Random(seed);
        east = new double[count];
        north = new double[count];
        unitEast = new double[count];
        unitNorth = new double[count];
        launch = new double[count];
        for (int i = 0; i < count; i++) {
            double turn = 2 * Math.PI * random.nextDouble();
            double away = 8 * Math.sqrt(random.nextDouble());
            double towards = 2 * Math.PI * random.nextDouble();
            east[i] = away * StrictMath.sin(towards);
            north[i] = away * StrictMath.cos(towards);
            unitEast[i] = StrictMath.sin(turn);
            unitNorth[i] = StrictMath.cos(turn);
            launch[i] = 1.5 + 0.7 * random.nextDouble();
        }
    }

    int count() {
        return launch.length;
    }

    void roll(BallRoller roller, int putt, RollState out) {
        roller.stopOf(east[putt], north[putt], unitEast[putt], unitNorth[putt], launch[putt], out);
    }

    /** {seconds, east, north} of the stop. */
    double[] roll(ReferenceRoll reference, int putt) {
        return reference.stop(
                east[putt], north[putt], unitEast[putt], unitNorth[putt], launch[putt], BallRoller.MOST_SECONDS);
    }
}
