package org.cupwright.units;

/**
 * How fast a green is: the distance in feet that a ball released at {@link #RELEASE_METRES_PER_SECOND} rolls on the
 * level.
 *
 * <p>Everything else follows from rolling without slipping of a solid sphere: on the level the ball loses speed at
 * {@code a_f = v0²/(2·0.3048·S)}, so the rolling resistance is {@code ρ = (7/5)·a_f/g = 0.7830/S}. A ball at rest stays
 * at rest where the ground's slope is at most ρ.
 *
 * <p>Source of the release speed: Holmes, The Physics Teacher 24 (1986), recalled; it agrees with a derivation from the
 * measuring bar's groove (1.8295 m/s at 20°).
 *
 * @param feet the reading, feet; between {@link #SLOWEST_FEET} and {@link #FASTEST_FEET}, outside which a number is
 *     taken for a slip of the pen
 */
public record GreenSpeed(double feet) implements Comparable<GreenSpeed> {
    public static final double SLOWEST_FEET = 4;
    public static final double FASTEST_FEET = 16;

    /** Speed at which the measuring bar releases the ball, m/s: 6.00 ft/s. */
    public static final double RELEASE_METRES_PER_SECOND = 1.8288;

    public GreenSpeed {
        if (!(feet >= SLOWEST_FEET && feet <= FASTEST_FEET)) {
            throw new IllegalArgumentException(
                    "green speed " + feet + " ft is outside " + SLOWEST_FEET + "–" + FASTEST_FEET);
        }
    }

    /** Deceleration of a ball rolling on the level, m/s². */
    public double decelerationOnLevel() {
        return RELEASE_METRES_PER_SECOND * RELEASE_METRES_PER_SECOND / (2 * LengthUnit.FOOT.toMetres(feet));
    }

    /** Rolling resistance ρ, a slope (rise over run): the steepest slope on which a ball stays at rest. */
    public double rollingResistance() {
        return 7.0 / 5.0 * decelerationOnLevel() / Physics.GRAVITY;
    }

    /** This speed with some feet added, kept inside the range of readings. */
    public GreenSpeed plus(double addedFeet) {
        return new GreenSpeed(Math.min(FASTEST_FEET, Math.max(SLOWEST_FEET, feet + addedFeet)));
    }

    @Override
    public int compareTo(GreenSpeed other) {
        return Double.compare(feet, other.feet);
    }
}
