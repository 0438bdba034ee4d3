package org.cupwright.roll;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.units.Physics;

/**
 * The motion of a solid sphere that rolls without slipping over a height field z(x, y), and one Runge–Kutta step of it.
 *
 * <p>With the gradient ∇z, the Hessian H, κ = q̇ᵀHq̇, G = 1 + |∇z|², V² = |q̇|² + (∇z·q̇)² and N/m = (g + κ)/√G, on the map:
 *
 * <pre>q̈ = −∇z·[(5/7)g + κ]/G − (5/7)·ρ·(N/m)·q̇/V</pre>
 *
 * <p>It follows from Lagrange's equations with the rolling sphere's inertia (2/5)mr² and a rolling resistance ρ times the normal
 * force (derived). Where the ball stands still, friction opposes the motion that gravity would start.
 *
 * <p>For one thread: the jet and the slopes of the four stages are reused.
 */
final class RollEquations {
    private static final double FIVE_SEVENTHS = 5.0 / 7.0;

    private final Surface surface;
    private final double resistance;
    private final Jet jet = new Jet();

    private double accelerationEast;
    private double accelerationNorth;
    private double groundSpeed;

    RollEquations(Surface surface, double resistance) {
        this.surface = surface;
        this.resistance = resistance;
    }

    /** The surface at a point, in the jet that every evaluation reuses. */
    Jet jetAt(double east, double north) {
        surface.at(east, north, jet);
        return jet;
    }

    private void evaluate(double east, double north, double u, double v) {
        surface.at(east, north, jet);
        double zx = jet.zx;
        double zy = jet.zy;
        double bend = u * u * jet.zxx + 2 * u * v * jet.zxy + v * v * jet.zyy;
        double g = 1 + zx * zx + zy * zy;
        double climb = zx * u + zy * v;
        groundSpeed = Math.sqrt(u * u + v * v + climb * climb);
        double pull = (FIVE_SEVENTHS * Physics.GRAVITY + bend) / g;
        double friction = FIVE_SEVENTHS * resistance * (Physics.GRAVITY + bend) / Math.sqrt(g);
        if (groundSpeed > 1e-12) {
            accelerationEast = -zx * pull - friction * u / groundSpeed;
            accelerationNorth = -zy * pull - friction * v / groundSpeed;
        } else {
            double slope = Math.sqrt(zx * zx + zy * zy);
            double left = slope > 0 ? Math.max(0, pull - friction / (slope * Math.sqrt(g))) : 0;
            accelerationEast = -zx * left;
            accelerationNorth = -zy * left;
        }
    }

    /** Advances a ball by a time: classical fourth-order Runge–Kutta, path lengths by Simpson's rule over its stages. */
    void step(RollState ball, double dt) {
        double e = ball.east;
        double n = ball.north;
        double u = ball.velocityEast;
        double v = ball.velocityNorth;

        evaluate(e, n, u, v);
        double a1 = accelerationEast;
        double b1 = accelerationNorth;
        double ground = groundSpeed;
        double map = Math.sqrt(u * u + v * v);

        double u2 = u + dt / 2 * a1;
        double v2 = v + dt / 2 * b1;
        evaluate(e + dt / 2 * u, n + dt / 2 * v, u2, v2);
        double a2 = accelerationEast;
        double b2 = accelerationNorth;

        double u3 = u + dt / 2 * a2;
        double v3 = v + dt / 2 * b2;
        evaluate(e + dt / 2 * u2, n + dt / 2 * v2, u3, v3);
        double a3 = accelerationEast;
        double b3 = accelerationNorth;
        ground += 4 * groundSpeed;
        map += 4 * Math.sqrt(u3 * u3 + v3 * v3);

        double u4 = u + dt * a3;
        double v4 = v + dt * b3;
        evaluate(e + dt * u3, n + dt * v3, u4, v4);
        ground += groundSpeed;
        map += Math.sqrt(u4 * u4 + v4 * v4);

        ball.east = e + dt / 6 * (u + 2 * u2 + 2 * u3 + u4);
        ball.north = n + dt / 6 * (v + 2 * v2 + 2 * v3 + v4);
        ball.velocityEast = u + dt / 6 * (a1 + 2 * a2 + 2 * a3 + accelerationEast);
        ball.velocityNorth = v + dt / 6 * (b1 + 2 * b2 + 2 * b3 + accelerationNorth);
        ball.seconds += dt;
        ball.pathMetres += dt / 6 * map;
        ball.pathGroundMetres += dt / 6 * ground;
    }
}
