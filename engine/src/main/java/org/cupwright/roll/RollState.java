package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.green.Jet;

/**
 * A rolling ball's place, velocity and path so far; written by {@link BallRoller}, reused from putt to putt by callers
 * that roll millions, one for each thread.
 *
 * <p>Metres and seconds; places, velocities and {@link #pathMetres} on the map, {@link #pathGroundMetres} along the
 * ground.
 */
public final class RollState {
    public double east;
    public double north;
    public double velocityEast;
    public double velocityNorth;
    public double seconds;
    public double pathMetres;
    public double pathGroundMetres;

    /** How the roll ended; null before its end. */
    public RollEnd end;

    final Jet jet = new Jet();
    final RollingMotion.Acceleration first = new RollingMotion.Acceleration();
    final RollingMotion.Acceleration later = new RollingMotion.Acceleration();

    final PlaneRest rest = new PlaneRest();

    /** The ball as it was before its last step; null in such a memory itself. */
    private final RollState before;

    public RollState() {
        this(new RollState(null));
    }

    private RollState(RollState before) {
        this.before = before;
    }

    /** A copy that does not change any more; only of a roll that has ended. */
    public Roll toRoll() {
        return new Roll(new MapPoint(east, north), seconds, pathMetres, pathGroundMetres, end);
    }

    void start(double fromEast, double fromNorth) {
        east = fromEast;
        north = fromNorth;
        velocityEast = 0;
        velocityNorth = 0;
        seconds = 0;
        pathMetres = 0;
        pathGroundMetres = 0;
        end = null;
    }

    /** Gives the ball its first velocity, the ground's gradient being in {@link #jet}. */
    void launch(double unitEast, double unitNorth, double metresPerSecond) {
        if (!(metresPerSecond >= 0 && metresPerSecond < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("launch speed " + metresPerSecond + " m/s; try a number from 0 to 5");
        }
        double climb = jet.zx * unitEast + jet.zy * unitNorth;
        double mapSpeed = metresPerSecond / Math.sqrt(1 + climb * climb);
        velocityEast = mapSpeed * unitEast;
        velocityNorth = mapSpeed * unitNorth;
    }

    /** Moves on by what a step adds; the velocity is set by the caller. */
    void move(double byEast, double byNorth, double bySeconds, double byPathMetres, double byPathGroundMetres) {
        east += byEast;
        north += byNorth;
        seconds += bySeconds;
        pathMetres += byPathMetres;
        pathGroundMetres += byPathGroundMetres;
    }

    void comeToRest() {
        velocityEast = 0;
        velocityNorth = 0;
        end = RollEnd.REST;
    }

    /** Remembers the ball as it is, for {@link #goBack}. */
    void keep() {
        before.copyFrom(this);
    }

    void goBack() {
        copyFrom(before);
    }

    private void copyFrom(RollState other) {
        east = other.east;
        north = other.north;
        velocityEast = other.velocityEast;
        velocityNorth = other.velocityNorth;
        seconds = other.seconds;
        pathMetres = other.pathMetres;
        pathGroundMetres = other.pathGroundMetres;
    }
}
