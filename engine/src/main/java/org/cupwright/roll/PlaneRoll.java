package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;

/** A ball rolled on a plane, by the closed form of {@link PlaneRest}. */
public final class PlaneRoll {
    private PlaneRoll() {}

    /**
     * The model of ground known only by a level reading: one ball rolled on the plane about a spot.
     *
     * @throws IllegalArgumentException if a ball does not stop on such a slope
     */
    public static Roll roll(
            PlaneFit plane, GreenSpeed speed, MapPoint from, Heading heading, double launchMetresPerSecond) {
        double rho = speed.rollingResistance();
        if (!(plane.slope() < rho)) {
            throw new IllegalArgumentException("a ball does not stop on a slope of " + 100 * plane.slope() + " % at "
                    + speed.feet() + " ft, where the steepest that holds one is " + 100 * rho
                    + " %; try a slower green or flatter ground");
        }
        RollState state = new RollState();
        state.start(from.east(), from.north());
        state.jet.zx = plane.gradientEast();
        state.jet.zy = plane.gradientNorth();
        state.launch(heading.east(), heading.north(), launchMetresPerSecond);
        if (launchMetresPerSecond > 0) {
            state.rest.solve(state, rho);
            state.rest.move(state, 1);
        }
        state.comeToRest();
        return state.toRoll();
    }
}
