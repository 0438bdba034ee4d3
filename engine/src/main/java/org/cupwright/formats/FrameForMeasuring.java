package org.cupwright.formats;

import org.cupwright.finding.UnreadableFile;
import org.locationtech.jts.geom.Coordinate;

/**
 * Whether a frame can be a course's frame: lengths in metres, true to the ground at the course.
 *
 * <p>Distances from edges and slopes are computed on the map, so a frame whose metre is not a metre on the ground (Web
 * Mercator's is 0.6 m at 53 degrees) would falsify every rule.
 */
public final class FrameForMeasuring {
    /** Greatest difference of scale from the ground, a share; national grids stay within 0.1 to 0.3 %. Our choice. */
    static final double GREATEST_SCALE_ERROR = 0.005;

    /** Half the length of the arcs over which the scale is measured, degrees. */
    private static final double HALF_ARC_DEGREES = 5e-4;

    /** WGS84 ellipsoid (NIMA TR8350.2): semi-major axis, m, and first eccentricity squared. */
    private static final double SEMI_MAJOR_METRES = 6_378_137.0;

    private static final double ECCENTRICITY_SQUARED = 6.694_379_990_14e-3;

    private FrameForMeasuring() {}

    /** Whether the frame is metric and true to scale at a place; false also where the place lies outside the frame. */
    public static boolean fits(CoordinateFrame frame, double longitudeDegrees, double latitudeDegrees) {
        boolean metric = !frame.isGeographic() && Math.abs(frame.unitMetres() - 1) < 1e-9;
        if (!metric) {
            return false;
        }
        try {
            return greatestScaleError(frame, longitudeDegrees, latitudeDegrees) <= GREATEST_SCALE_ERROR;
        } catch (UnreadableFile outside) {
            return false;
        }
    }

    private static double greatestScaleError(CoordinateFrame frame, double longitude, double latitude) {
        Projection projection = Projection.between(CoordinateFrame.of(CoordinateFrame.WGS84), frame);
        double s = HALF_ARC_DEGREES;
        double middle = Math.max(s - 180, Math.min(180 - s, longitude)); // the arc ends at 180 degrees at the latest
        double north = length(projection, middle, latitude - s, middle, latitude + s);
        double east = length(projection, middle - s, latitude, middle + s, latitude);
        double sine = StrictMath.sin(Math.toRadians(latitude));
        double cosine = StrictMath.cos(Math.toRadians(latitude));
        double w = Math.sqrt(1 - ECCENTRICITY_SQUARED * sine * sine);
        double arc = Math.toRadians(2 * s);
        double trueNorth = arc * SEMI_MAJOR_METRES * (1 - ECCENTRICITY_SQUARED) / (w * w * w);
        double trueEast = arc * SEMI_MAJOR_METRES * cosine / w;
        return Math.max(Math.abs(north / trueNorth - 1), Math.abs(east / trueEast - 1));
    }

    private static double length(Projection projection, double x1, double y1, double x2, double y2) {
        Coordinate a = projection.apply(x1, y1);
        return a.distance(projection.apply(x2, y2));
    }
}
