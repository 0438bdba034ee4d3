package org.cupwright.roll;

import org.cupwright.green.Jet;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Physics;

/**
 * How the velocity of a rolling ball changes at a place: the equations of a solid sphere that rolls without slipping on
 * a curved surface, its centre kept on the surface (derived, no source needed).
 *
 * <p>With q the place on the map, ∇z and H the surface's gradient and second derivatives, {@code κ = q̇ᵀHq̇},
 * {@code G = 1 + |∇z|²}, {@code V² = |q̇|² + (∇z·q̇)²} and the ground's push {@code N/m = (g + κ)/√G}:
 *
 * <pre>q̈ = −∇z·[(5/7)g + κ]/G − (5/7)·ρ·(N/m)·q̇/V</pre>
 *
 * <p>On a crest taken so fast that the ball would fly, the ground does not push and does not brake. With time running
 * backwards the same equations hold: step by a negative time. Safe for use by several threads.
 */
public final class RollingMotion {
    /** What rolling leaves of a force along the slope: a solid sphere's 1/(1 + 2/5). */
    static final double SPHERE = 5.0 / 7.0;

    private static final double DRIVE = SPHERE * Physics.GRAVITY;

    private final double rollingResistance;

    public RollingMotion(GreenSpeed speed) {
        this.rollingResistance = speed.rollingResistance();
    }

    /** ρ, the slope up to which a ball stays at rest. */
    public double rollingResistance() {
        return rollingResistance;
    }

    /** Deceleration of a ball rolling on the level, m/s². */
    double decelerationOnLevel() {
        return DRIVE * rollingResistance;
    }

    /**
     * The acceleration on the map.
     *
     * @param jet the surface at the ball's place
     * @param velocityEast m/s on the map
     * @param velocityNorth m/s on the map; not zero together with velocityEast
     * @param out receives the acceleration and the speeds
     */
    public void at(Jet jet, double velocityEast, double velocityNorth, Acceleration out) {
        double gradientSquare = 1 + jet.zx * jet.zx + jet.zy * jet.zy;
        double climb = jet.zx * velocityEast + jet.zy * velocityNorth;
        double mapSpeedSquare = velocityEast * velocityEast + velocityNorth * velocityNorth;
        double groundSpeed = Math.sqrt(mapSpeedSquare + climb * climb);
        double bend = jet.zxx * velocityEast * velocityEast
                + 2 * jet.zxy * velocityEast * velocityNorth
                + jet.zyy * velocityNorth * velocityNorth;
        double drive = -(DRIVE + bend) / gradientSquare;
        double push = Math.max(0, Physics.GRAVITY + bend) / Math.sqrt(gradientSquare);
        double drag = -SPHERE * rollingResistance * push / groundSpeed;
        out.east = drive * jet.zx + drag * velocityEast;
        out.north = drive * jet.zy + drag * velocityNorth;
        out.groundSpeed = groundSpeed;
        out.mapSpeed = Math.sqrt(mapSpeedSquare);
    }

    /** Receives the answer of {@link #at}; reused by callers that ask millions of times. */
    public static final class Acceleration {
        /** m/s² on the map. */
        public double east;

        /** m/s² on the map. */
        public double north;

        /** The ball's speed along the ground, m/s. */
        public double groundSpeed;

        /** The ball's speed on the map, m/s. */
        public double mapSpeed;
    }
}
