package org.cupwright.roll;

import org.cupwright.units.GreenSpeed;

/**
 * A reading of green speed both ways on a slope.
 *
 * @param downFeet how far the ball rolled downhill, feet
 * @param upFeet how far it rolled uphill, feet
 */
public record GreenSpeedReading(double downFeet, double upFeet) {
    public GreenSpeedReading {
        if (!(upFeet > 0 && downFeet >= upFeet)) {
            throw new IllegalArgumentException(
                    "a ball rolls farther down than up: " + downFeet + " ft down, " + upFeet + " ft up");
        }
    }

    /** The speed on the level: 2·S_u·S_d/(S_u + S_d) (Brede, USGA Green Section Record 28(6), 1990). */
    public GreenSpeed level() {
        return new GreenSpeed(2 * upFeet * downFeet / (upFeet + downFeet));
    }

    /** The slope it was read on, rise over run: ρ·(S_d − S_u)/(S_d + S_u) (derived). */
    public double slope() {
        return level().rollingResistance() * (downFeet - upFeet) / (downFeet + upFeet);
    }
}
