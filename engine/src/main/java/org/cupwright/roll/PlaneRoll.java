package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;

/**
 * Where a ball comes to rest on a plane, in closed form (derived from the equations of {@link RollingMotion} with
 * constant slope).
 *
 * <p>With f the braking and σ the downhill acceleration, c and s the cosine and sine of the angle between the launch
 * and straight down, v the launch speed:
 *
 * <pre>
 * t    = v/2·[(1+c)/(f−σ) + (1−c)/(f+σ)]
 * down = v²/8·[(1+c)²/(f−σ) − (1−c)²/(f+σ)]
 * across = v²s/2·[(1+c)/(2f−σ) + (1−c)/(2f+σ)]
 * path = v²/8·[(1+c)²/(f−σ) + 2s²/f + (1−c)²/(f+σ)]
 * </pre>
 *
 * <p>This is the textbook form in tan(ψ/2), written so that no launch and no slope below ρ is a special case.
 *
 * @param downMetres how far down the plane, measured in the plane; negative: up
 * @param acrossMetres how far across, positive to the side of a positive angle
 * @param seconds time until it rests
 * @param pathGroundMetres length of its path in the plane
 * @param mapDownMetres downMetres seen on the map; acrossMetres is the same there
 * @param pathMetres length of its path on the map, right to an eighth of the slope's fourth power (0.02 mm in 4 m at 8
 *     %)
 */
public record PlaneRoll(
        double downMetres,
        double acrossMetres,
        double seconds,
        double pathGroundMetres,
        double mapDownMetres,
        double pathMetres) {
    /**
     * @param slope of the plane, rise over run
     * @param speed of the green
     * @param metresPerSecond launch along the plane
     * @param degreesFromDownhill between the launch and straight down, measured in the plane
     * @throws IllegalArgumentException if a ball does not stop on such a slope
     */
    public static PlaneRoll of(double slope, GreenSpeed speed, double metresPerSecond, double degreesFromDownhill) {
        double angle = Math.toRadians(degreesFromDownhill);
        PlaneRest rest = new PlaneRest();
        rest.solve(
                holding(slope, speed),
                speed.rollingResistance(),
                metresPerSecond,
                StrictMath.cos(angle),
                StrictMath.sin(angle));
        return new PlaneRoll(rest.down, rest.across, rest.seconds, rest.pathGround, rest.mapDown, rest.path);
    }

    /**
     * The model of ground known only by a level reading: one ball rolled on the plane about a spot.
     *
     * @throws IllegalArgumentException if a ball does not stop on such a slope
     */
    public static Roll roll(
            PlaneFit plane, GreenSpeed speed, MapPoint from, Heading heading, double launchMetresPerSecond) {
        holding(plane.slope(), speed);
        RollState state = new RollState();
        state.start(from.east(), from.north());
        state.jet.zx = plane.gradientEast();
        state.jet.zy = plane.gradientNorth();
        state.launch(heading.east(), heading.north(), launchMetresPerSecond);
        if (launchMetresPerSecond > 0) {
            state.rest.solve(state, speed.rollingResistance());
            state.rest.move(state, 1);
        }
        state.comeToRest();
        return state.toRoll();
    }

    private static double holding(double slope, GreenSpeed speed) {
        double rho = speed.rollingResistance();
        if (!(slope >= 0 && slope < rho)) {
            throw new IllegalArgumentException("a ball does not stop on a slope of " + 100 * slope + " % at "
                    + speed.feet() + " ft, where the steepest that holds one is " + 100 * rho
                    + " %; try a slower green or flatter ground");
        }
        return slope;
    }
}
