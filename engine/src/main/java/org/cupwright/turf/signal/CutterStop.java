package org.cupwright.turf.signal;

/** How deep a cutter's stop must be set, so that the cup comes to rest on firm soil and far enough down. */
public final class CutterStop {
    /** The cup's rim is at least 1 in below the surface (Rules of Golf, Definition "Hole"). */
    public static final double RIM_DOWN_MILLIMETRES = 25.4;

    private CutterStop() {}

    /** Stop depth for a cup so high, mm: the cup's height and the inch above it. */
    public static double depthMillimetres(double cupHeightMillimetres) {
        if (!(cupHeightMillimetres > 0 && cupHeightMillimetres < 300)) {
            throw new IllegalArgumentException(
                    "a cup " + cupHeightMillimetres + " mm high; measure from its foot to its rim, in millimetres");
        }
        return cupHeightMillimetres + RIM_DOWN_MILLIMETRES;
    }
}
