package org.cupwright.published;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.roll.RollingMotion;
import org.cupwright.units.GreenSpeed;

/**
 * The putt that passes the origin at a speed and in a direction, followed backwards in small steps of time until it is
 * some way off: where it must have started, and how. Test code with an integrator of its own.
 */
final class PassingPutt {
    private static final double STEP_SECONDS = -0.002;

    private final Surface surface;
    private final RollingMotion motion;
    private final Jet jet = new Jet();
    private final RollingMotion.Acceleration acceleration = new RollingMotion.Acceleration();

    /** Place and velocity on the map: of the launch, once followed back. */
    double east;

    double north;
    double velocityEast;
    double velocityNorth;

    private PassingPutt(Surface surface, GreenSpeed speed) {
        this.surface = surface;
        this.motion = new RollingMotion(speed);
    }

    /** @param turn direction in which it passes, radians from east towards north */
    static PassingPutt followedBack(
            Surface surface, GreenSpeed speed, double metresPerSecond, double turn, double distance) {
        PassingPutt putt = new PassingPutt(surface, speed);
        putt.velocityEast = metresPerSecond * StrictMath.cos(turn);
        putt.velocityNorth = metresPerSecond * StrictMath.sin(turn);
        double before = 0;
        while (Math.hypot(putt.east, putt.north) < distance) {
            before = Math.hypot(putt.east, putt.north);
            putt.step(STEP_SECONDS);
        }
        double over = Math.hypot(putt.east, putt.north);
        putt.step(-STEP_SECONDS * (over - distance) / (over - before));
        return putt;
    }

    /**
     * The putt from a place at a distance: the direction of passing is found by halving.
     *
     * @param fromTurn direction from the origin to the start, radians from east towards north
     */
    static PassingPutt from(
            Surface surface, GreenSpeed speed, double metresPerSecond, double fromTurn, double distance) {
        double straight = fromTurn + Math.PI;
        double low = straight - 1;
        double high = straight + 1;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            PassingPutt putt = followedBack(surface, speed, metresPerSecond, middle, distance);
            double beyond = putt.north * StrictMath.cos(fromTurn) - putt.east * StrictMath.sin(fromTurn);
            if (beyond > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return followedBack(surface, speed, metresPerSecond, low, distance);
    }

    /** The north of the point where the launch's straight line meets east = 0. */
    double aimNorth() {
        return north - east * velocityNorth / velocityEast;
    }

    /** Heun's rule with a correction repeated: second order, at 2 ms right to a few micrometres. */
    private void step(double seconds) {
        accelerate(east, north, velocityEast, velocityNorth);
        double firstEast = acceleration.east;
        double firstNorth = acceleration.north;
        double nextVelocityEast = velocityEast + seconds * firstEast;
        double nextVelocityNorth = velocityNorth + seconds * firstNorth;
        for (int i = 0; i < 3; i++) {
            accelerate(
                    east + seconds * (velocityEast + nextVelocityEast) / 2,
                    north + seconds * (velocityNorth + nextVelocityNorth) / 2,
                    nextVelocityEast,
                    nextVelocityNorth);
            nextVelocityEast = velocityEast + seconds * (firstEast + acceleration.east) / 2;
            nextVelocityNorth = velocityNorth + seconds * (firstNorth + acceleration.north) / 2;
        }
        east += seconds * (velocityEast + nextVelocityEast) / 2;
        north += seconds * (velocityNorth + nextVelocityNorth) / 2;
        velocityEast = nextVelocityEast;
        velocityNorth = nextVelocityNorth;
    }

    private void accelerate(double atEast, double atNorth, double vEast, double vNorth) {
        surface.at(atEast, atNorth, jet);
        motion.at(jet, vEast, vNorth, acceleration);
    }
}
