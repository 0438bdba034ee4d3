package org.cupwright.roll;

import org.cupwright.units.GreenSpeed;

/** All that the closed form says of one roll on a plane, in metres and seconds. */
public record PlaneNumbers(double down, double across, double seconds, double pathGround, double mapDown, double path) {
    /**
     * @param slope of the plane, rise over run
     * @param metresPerSecond launch along the plane
     * @param degreesFromDownhill between the launch and straight down, measured in the plane
     */
    public static PlaneNumbers of(double slope, GreenSpeed speed, double metresPerSecond, double degreesFromDownhill) {
        double angle = Math.toRadians(degreesFromDownhill);
        PlaneRest rest = new PlaneRest();
        rest.solve(slope, speed.rollingResistance(), metresPerSecond, StrictMath.cos(angle), StrictMath.sin(angle));
        return new PlaneNumbers(rest.down, rest.across, rest.seconds, rest.pathGround, rest.mapDown, rest.path);
    }
}
