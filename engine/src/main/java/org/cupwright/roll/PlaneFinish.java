package org.cupwright.roll;

import org.cupwright.green.Jet;

/** Brings a ball to rest on the plane that touches the ground where it is. */
final class PlaneFinish {
    private PlaneFinish() {}

    /** The rest of the roll, from the gradient in {@code state.jet} and the state's velocity, which must not be zero. */
    static PlaneRoll restOf(RollState state, double rollingResistance) {
        Jet jet = state.jet;
        double slopeSquare = jet.zx * jet.zx + jet.zy * jet.zy;
        double slope = Math.sqrt(slopeSquare);
        double u = state.velocityEast;
        double w = state.velocityNorth;
        double climb = jet.zx * u + jet.zy * w;
        double groundSpeed = Math.sqrt(u * u + w * w + climb * climb);
        if (slope == 0) {
            return PlaneRoll.of(0, rollingResistance, groundSpeed, 1, 0);
        }
        double cos = -climb * Math.sqrt(1 + slopeSquare) / (slope * groundSpeed);
        double sin = (u * jet.zy - w * jet.zx) / (slope * groundSpeed);
        return PlaneRoll.of(slope, rollingResistance, groundSpeed, cos, sin);
    }

    /** Moves the ball by a share of the rest of its roll; 1 is its stop. */
    static void move(RollState state, PlaneRoll rest, double share) {
        Jet jet = state.jet;
        double slope = Math.sqrt(jet.zx * jet.zx + jet.zy * jet.zy);
        double mapSpeed =
                Math.sqrt(state.velocityEast * state.velocityEast + state.velocityNorth * state.velocityNorth);
        double downEast = slope == 0 ? state.velocityEast / mapSpeed : -jet.zx / slope;
        double downNorth = slope == 0 ? state.velocityNorth / mapSpeed : -jet.zy / slope;
        state.move(
                share * (rest.mapDownMetres() * downEast - rest.acrossMetres() * downNorth),
                share * (rest.mapDownMetres() * downNorth + rest.acrossMetres() * downEast),
                share * rest.seconds(),
                share * rest.pathMetres(),
                share * rest.pathGroundMetres());
    }
}
