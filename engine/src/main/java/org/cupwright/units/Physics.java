package org.cupwright.units;

/** Constants of nature and of the Rules of Golf that more than one package needs, in SI units. */
public final class Physics {
    /** Acceleration of free fall, m/s²; the rounded value in which all check values of the project are stated. */
    public static final double GRAVITY = 9.81;

    /** Radius of the smallest ball allowed, m: 42.67 mm diameter (Rules of Golf / Equipment Rules). */
    public static final double BALL_RADIUS_METRES = 0.021335;

    /** Radius of the hole, m: 108 mm diameter (Rules of Golf, Definition "Hole"). */
    public static final double HOLE_RADIUS_METRES = 0.054;

    private Physics() {}
}
