package org.cupwright.roll;

import org.cupwright.units.Physics;

/**
 * A ball rolled to rest on a plane, in closed form (derived from the equations of rolling on a plane; the ball's direction ψ turns
 * downhill as it slows, and speed is a power of tan(ψ/2)).
 *
 * <p>Down is measured in the plane along the fall line, across at right angles to it; k = ρ/tan α must exceed 1, or the ball never
 * stops.
 *
 * @param downMetres how far down the fall line it stopped, in the plane; negative uphill
 * @param acrossMetres how far across, in the direction in which it started across; never negative
 * @param seconds how long it rolled
 * @param pathMetres length of its path in the plane
 */
public record PlaneRoll(double downMetres, double acrossMetres, double seconds, double pathMetres) {
    /** Below this slope a plane is level: the fall line means nothing, and the closed form would divide by it. */
    private static final double LEVEL = 1e-9;

    /**
     * Rolls a ball to rest.
     *
     * @param slope the plane's slope, rise over run
     * @param resistance rolling resistance ρ, rise over run; greater than slope
     * @param speed speed along the plane, m/s
     * @param cosine cosine of the angle between the start direction and straight down, measured in the plane
     * @throws IllegalArgumentException if a ball does not stop on such a plane
     */
    public static PlaneRoll toRest(double slope, double resistance, double speed, double cosine) {
        if (slope >= resistance) {
            throw new IllegalArgumentException(
                    "a ball does not stop on a slope of " + slope + " with rolling resistance " + resistance);
        }
        double cosAlpha = 1 / Math.sqrt(1 + slope * slope);
        double friction = 5.0 / 7.0 * resistance * Physics.GRAVITY * cosAlpha;
        if (slope < LEVEL) {
            double length = speed * speed / (2 * friction);
            double sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
            return new PlaneRoll(length * cosine, length * sine, speed / friction, length);
        }
        double pull = 5.0 / 7.0 * Physics.GRAVITY * slope * cosAlpha;
        double k = friction / pull;
        double c2 = Math.min(1, Math.max(0, (1 + cosine) / 2));
        double s2 = 1 - c2;
        double seconds = speed / pull * (c2 / (k - 1) + s2 / (k + 1));
        double scale = speed * speed / pull;
        double down = scale * (c2 * c2 / (2 * k - 2) - s2 * s2 / (2 * k + 2));
        double across = 2 * scale * Math.sqrt(c2 * s2) * (c2 / (2 * k - 1) + s2 / (2 * k + 1));
        double drop = down * slope * cosAlpha;
        double path = (0.7 * speed * speed / Physics.GRAVITY + drop) / (resistance * cosAlpha);
        return new PlaneRoll(down, across, seconds, path);
    }
}
