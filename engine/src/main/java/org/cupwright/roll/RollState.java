package org.cupwright.roll;

/**
 * A ball on its way: reused from roll to roll by callers that roll millions, so mutable and for one thread.
 *
 * <p>Place and velocity are on the map (m, m/s); path lengths are kept on the map and along the ground.
 */
public final class RollState {
    public double east;
    public double north;
    public double velocityEast;
    public double velocityNorth;
    public double seconds;
    public double pathMetres;
    public double pathGroundMetres;
    public RollEnd end = RollEnd.RUNNING;

    /** Puts the ball down at a point with a velocity on the map. */
    void start(double atEast, double atNorth, double eastwards, double northwards) {
        east = atEast;
        north = atNorth;
        velocityEast = eastwards;
        velocityNorth = northwards;
        seconds = 0;
        pathMetres = 0;
        pathGroundMetres = 0;
        end = RollEnd.RUNNING;
    }
}
