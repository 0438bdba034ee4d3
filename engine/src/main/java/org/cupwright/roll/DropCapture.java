package org.cupwright.roll;

import org.cupwright.units.Physics;

/**
 * A ball is holed if it falls by its radius before it meets the far rim: v ≤ √(g/2R)·[√(R_h² − δ²) + √(max(0, (R_h − R)² − δ²))].
 *
 * <p>Holmes, Am. J. Phys. 59 (1991), recalled, for offsets up to R_h − R; beyond that the second root is zero, our choice: it keeps
 * the limit continuous and fits make rates better.
 */
public final class DropCapture implements Capture {
    private static final double HOLE = Physics.HOLE_RADIUS_METRES;
    private static final double BALL = Physics.BALL_RADIUS_METRES;

    @Override
    public double greatestSpeed(double offsetMetres) {
        double square = offsetMetres * offsetMetres;
        double rim = HOLE * HOLE - square;
        if (rim <= 0) {
            return 0;
        }
        double fall = Math.max(0, (HOLE - BALL) * (HOLE - BALL) - square);
        return Math.sqrt(Physics.GRAVITY / (2 * BALL)) * (Math.sqrt(rim) + Math.sqrt(fall));
    }
}
