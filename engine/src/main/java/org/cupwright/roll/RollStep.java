package org.cupwright.roll;

import org.cupwright.green.Surface;

/** One step of the classical fourth-order Runge–Kutta rule for a rolling ball, its path lengths by the same rule. */
record RollStep(Surface surface, RollingMotion motion) {
    /** Moves a ball on by some seconds; {@code state.first} must be the acceleration where it is. */
    void take(RollState state, double seconds) {
        double half = seconds / 2;
        double u1 = state.velocityEast;
        double w1 = state.velocityNorth;
        double a1 = state.first.east;
        double b1 = state.first.north;
        RollingMotion.Acceleration next = state.later;

        double u2 = u1 + half * a1;
        double w2 = w1 + half * b1;
        look(state, half * u1, half * w1, u2, w2);
        double a2 = next.east;
        double b2 = next.north;
        double ground = state.first.groundSpeed + 2 * next.groundSpeed;
        double map = state.first.mapSpeed + 2 * next.mapSpeed;

        double u3 = u1 + half * a2;
        double w3 = w1 + half * b2;
        look(state, half * u2, half * w2, u3, w3);
        double a3 = next.east;
        double b3 = next.north;
        ground += 2 * next.groundSpeed;
        map += 2 * next.mapSpeed;

        double u4 = u1 + seconds * a3;
        double w4 = w1 + seconds * b3;
        look(state, seconds * u3, seconds * w3, u4, w4);
        double sixth = seconds / 6;
        state.velocityEast = u1 + sixth * (a1 + 2 * (a2 + a3) + next.east);
        state.velocityNorth = w1 + sixth * (b1 + 2 * (b2 + b3) + next.north);
        state.move(
                sixth * (u1 + 2 * (u2 + u3) + u4),
                sixth * (w1 + 2 * (w2 + w3) + w4),
                seconds,
                sixth * (map + next.mapSpeed),
                sixth * (ground + next.groundSpeed));
    }

    private void look(RollState state, double east, double north, double velocityEast, double velocityNorth) {
        surface.at(state.east + east, state.north + north, state.jet);
        motion.at(state.jet, velocityEast, velocityNorth, state.later);
    }
}
