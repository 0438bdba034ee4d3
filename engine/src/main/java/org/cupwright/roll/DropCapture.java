package org.cupwright.roll;

import org.cupwright.units.Physics;

/**
 * Falls in if the ball drops by its radius before its centre has passed the far rim (Holmes, American Journal of
 * Physics 59, 1991, recalled; the speeds themselves derived):
 *
 * <pre>v ≤ √(g/2R)·[√(R_h² − δ²) + √(max(0, (R_h − R)² − δ²))]</pre>
 *
 * <p>The drop rule ends at |δ| = R_h − R. From there to the rim the second root is 0: our choice, continuous at both
 * ends.
 */
public final class DropCapture implements Capture {
    private static final double HOLE = Physics.HOLE_RADIUS_METRES;
    private static final double CLEAR = HOLE - Physics.BALL_RADIUS_METRES;
    private static final double SCALE = Math.sqrt(Physics.GRAVITY / (2 * Physics.BALL_RADIUS_METRES));

    @Override
    public double reachMetres() {
        return HOLE;
    }

    @Override
    public double greatestMetresPerSecond(double offsetMetres) {
        double square = offsetMetres * offsetMetres;
        double chord = Math.sqrt(Math.max(0, HOLE * HOLE - square));
        double clearChord = Math.sqrt(Math.max(0, CLEAR * CLEAR - square));
        return SCALE * (chord + clearChord);
    }
}
