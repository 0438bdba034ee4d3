package org.cupwright.roll;

import org.cupwright.green.Jet;
import org.cupwright.units.Physics;

/**
 * Where a ball comes to rest on a plane, in closed form (derived from the equations of {@link RollingMotion} with
 * constant slope).
 *
 * <p>With f the braking and σ the downhill acceleration, c and s the cosine and sine of the angle between the launch
 * and straight down, v the launch speed:
 *
 * <pre>
 * t    = v/2·[(1+c)/(f−σ) + (1−c)/(f+σ)]
 * down = v²/8·[(1+c)²/(f−σ) − (1−c)²/(f+σ)]
 * across = v²s/2·[(1+c)/(2f−σ) + (1−c)/(2f+σ)]
 * path = v²/8·[(1+c)²/(f−σ) + 2s²/f + (1−c)²/(f+σ)]
 * </pre>
 *
 * <p>This is the textbook form in tan(ψ/2), written so that no launch and no slope below ρ is a special case.
 *
 * <p>Written over from putt to putt: no object is made for a ball that comes to rest. Lengths in metres: down the plane
 * (negative: up), across it to the side of a positive angle, along its path in the plane; {@code mapDown} and {@code
 * path} are the same seen on the map, the path right to an eighth of the slope's fourth power (0.02 mm in 4 m at 8 %).
 */
final class PlaneRest {
    double down;
    double across;
    double seconds;
    double pathGround;
    double mapDown;
    double path;

    /**
     * @param slope below ρ
     * @param v launch speed along the plane, m/s
     * @param cos of the angle between the launch and straight down, in the plane; sin likewise
     */
    void solve(double slope, double rollingResistance, double v, double cos, double sin) {
        double cosSlope = 1 / Math.sqrt(1 + slope * slope);
        double sinSlope = slope * cosSlope;
        double f = RollingMotion.SPHERE * Physics.GRAVITY * rollingResistance * cosSlope;
        double sigma = RollingMotion.SPHERE * Physics.GRAVITY * sinSlope;
        double ahead = (1 + cos) / (f - sigma);
        double back = (1 - cos) / (f + sigma);
        double straight = v * v / 8 * ((1 + cos) * ahead + (1 - cos) * back);
        double aside = v * v * sin * sin / (4 * f);
        down = v * v / 8 * ((1 + cos) * ahead - (1 - cos) * back);
        across = v * v * sin / 2 * ((1 + cos) / (2 * f - sigma) + (1 - cos) / (2 * f + sigma));
        seconds = v / 2 * (ahead + back);
        pathGround = straight + aside;
        mapDown = down * cosSlope;
        path = pathGround - sinSlope * sinSlope / 2 * (straight - aside);
    }

    /** The rest of a roll on the plane of the gradient in {@code state.jet}; the ball must be moving. */
    void solve(RollState state, double rollingResistance) {
        Jet jet = state.jet;
        double slopeSquare = jet.zx * jet.zx + jet.zy * jet.zy;
        double slope = Math.sqrt(slopeSquare);
        double u = state.velocityEast;
        double w = state.velocityNorth;
        double climb = jet.zx * u + jet.zy * w;
        double groundSpeed = Math.sqrt(u * u + w * w + climb * climb);
        if (slope == 0) {
            solve(0, rollingResistance, groundSpeed, 1, 0);
        } else {
            double cos = -climb * Math.sqrt(1 + slopeSquare) / (slope * groundSpeed);
            double sin = (u * jet.zy - w * jet.zx) / (slope * groundSpeed);
            solve(slope, rollingResistance, groundSpeed, cos, sin);
        }
    }

    /** Moves the ball by a share of the rest of its roll; 1 is its stop. */
    void move(RollState state, double share) {
        Jet jet = state.jet;
        double slope = Math.sqrt(jet.zx * jet.zx + jet.zy * jet.zy);
        double u = state.velocityEast;
        double w = state.velocityNorth;
        double mapSpeed = Math.sqrt(u * u + w * w);
        double downEast = slope == 0 ? u / mapSpeed : -jet.zx / slope;
        double downNorth = slope == 0 ? w / mapSpeed : -jet.zy / slope;
        state.move(
                share * (mapDown * downEast - across * downNorth),
                share * (mapDown * downNorth + across * downEast),
                share * seconds,
                share * path,
                share * pathGround);
    }
}
