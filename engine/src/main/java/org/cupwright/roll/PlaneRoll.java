package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.cupwright.units.Physics;

/**
 * Where a ball comes to rest on a plane, in closed form (derived from the equations of {@link RollingMotion} with constant slope).
 *
 * <p>With f the braking and σ the downhill acceleration, c and s the cosine and sine of the angle between the launch and straight
 * down, v the launch speed:
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
 * @param pathMetres length of its path on the map, right to an eighth of the slope's fourth power (0.02 mm in 4 m at 8 %)
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
        return of(slope, speed.rollingResistance(), metresPerSecond, StrictMath.cos(angle), StrictMath.sin(angle));
    }

    /**
     * The model of ground known only by a level reading: one ball rolled on the plane about a spot.
     *
     * @throws IllegalArgumentException if a ball does not stop on such a slope
     */
    public static Roll roll(
            PlaneFit plane, GreenSpeed speed, MapPoint from, Heading heading, double launchMetresPerSecond) {
        RollState state = new RollState();
        state.start(from.east(), from.north());
        state.jet.zx = plane.gradientEast();
        state.jet.zy = plane.gradientNorth();
        state.launch(heading.east(), heading.north(), launchMetresPerSecond);
        if (launchMetresPerSecond > 0) {
            PlaneFinish.move(state, PlaneFinish.restOf(state, speed.rollingResistance()), 1);
        }
        state.end = RollEnd.REST;
        return state.toRoll();
    }

    static PlaneRoll of(double slope, double rollingResistance, double v, double cos, double sin) {
        if (!(slope >= 0 && slope < rollingResistance)) {
            throw new IllegalArgumentException("a ball does not stop on a slope of " + 100 * slope
                    + " % where the steepest that holds one is " + 100 * rollingResistance
                    + " %; try a slower green or flatter ground");
        }
        double cosSlope = 1 / Math.sqrt(1 + slope * slope);
        double sinSlope = slope * cosSlope;
        double f = RollingMotion.SPHERE * Physics.GRAVITY * rollingResistance * cosSlope;
        double sigma = RollingMotion.SPHERE * Physics.GRAVITY * sinSlope;
        double ahead = (1 + cos) / (f - sigma);
        double back = (1 - cos) / (f + sigma);
        double straight = v * v / 8 * ((1 + cos) * ahead + (1 - cos) * back);
        double aside = v * v * sin * sin / (4 * f);
        double down = v * v / 8 * ((1 + cos) * ahead - (1 - cos) * back);
        double across = v * v * sin / 2 * ((1 + cos) / (2 * f - sigma) + (1 - cos) / (2 * f + sigma));
        double path = straight + aside;
        double foreshortening = sinSlope * sinSlope / 2 * (straight - aside);
        return new PlaneRoll(down, across, v / 2 * (ahead + back), path, down * cosSlope, path - foreshortening);
    }
}
