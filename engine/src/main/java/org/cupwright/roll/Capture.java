package org.cupwright.roll;

/**
 * Whether a ball that comes to the hole falls in. Another rule can take {@link DropCapture}'s place; skill figures that
 * were fitted with one rule belong to that rule.
 *
 * <p>The offset is how far the hole's centre lies beside the ball's line, metres; its sign does not matter.
 */
public interface Capture {
    /** The largest offset at which a ball may fall in, metres. */
    double reachMetres();

    /** The greatest speed along the ground at which a ball still falls in, m/s; 0 from the reach outwards. */
    double greatestMetresPerSecond(double offsetMetres);

    /** Whether a ball passing at an offset and a speed falls in. */
    default boolean captures(double offsetMetres, double metresPerSecond) {
        return Math.abs(offsetMetres) <= reachMetres() && metresPerSecond <= greatestMetresPerSecond(offsetMetres);
    }

    /**
     * Whether a ball that comes to rest so far from the hole's centre is holed: it is when its centre is over the
     * hole.
     */
    default boolean holdsAtRest(double distanceMetres) {
        return distanceMetres <= reachMetres();
    }
}
