package org.cupwright.units;

/**
 * A green-speed reading taken both ways on a slope, and what it says of the speed and of the slope.
 *
 * <p>The speed is {@code 2·S_u·S_d/(S_u + S_d)}: Brede, USGA Green Section Record 28(6), 1990. The slope follows from rolling on a
 * plane: {@code ρ·(S_d − S_u)/(S_d + S_u)} (derived).
 *
 * @param downFeet mean distance rolled downhill, feet
 * @param upFeet mean distance rolled uphill, feet, at most downFeet
 */
public record GreenSpeedReading(double downFeet, double upFeet) {
    public GreenSpeedReading {
        if (!(upFeet > 0 && downFeet < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a ball rolls some distance both ways, not " + downFeet + " ft down and " + upFeet + " ft up");
        }
        if (upFeet > downFeet) {
            throw new IllegalArgumentException("rolled farther up (" + upFeet + " ft) than down (" + downFeet
                    + " ft); try the two the other way round");
        }
    }

    /** The reading this would have been on the level, feet; not yet checked to be a green's. */
    public double feetOnLevel() {
        return 2 * upFeet * downFeet / (upFeet + downFeet);
    }

    /**
     * The green's speed.
     *
     * @throws IllegalArgumentException if {@link #feetOnLevel} is no green's speed
     */
    public GreenSpeed speed() {
        return new GreenSpeed(feetOnLevel());
    }

    /** The slope along the reading, rise over run. */
    public double slope() {
        return speed().rollingResistance() * (downFeet - upFeet) / (downFeet + upFeet);
    }
}
