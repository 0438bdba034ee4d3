package org.cupwright.roll;

/** Where a ball is and how fast after some time: the roller's own steps, stopped on the way. */
public final class BallAtTime {
    private BallAtTime() {}

    /**
     * The state after some seconds; its end is null where the ball still rolls, and set as soon as its last millimetres
     * begin.
     *
     * @param unitEast east component of the first direction on the map, a unit vector
     */
    public static RollState after(
            double seconds, BallRoller roller, double unitEast, double unitNorth, double launchMetresPerSecond) {
        RollState state = new RollState();
        roller.launch(0, 0, unitEast, unitNorth, launchMetresPerSecond, state);
        while (state.end == null && state.seconds < seconds) {
            roller.advance(state, seconds);
        }
        return state;
    }
}
