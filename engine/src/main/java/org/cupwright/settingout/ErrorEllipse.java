package org.cupwright.settingout;

/**
 * How uncertain a point on the map is: the ellipse of one standard error.
 *
 * @param semiMajorMetres standard error in the direction in which the point is known worst
 * @param semiMinorMetres standard error at right angles to it
 * @param majorAxisDegrees that direction, clockwise from the map's north, 0 ≤ degrees &lt; 180
 */
public record ErrorEllipse(double semiMajorMetres, double semiMinorMetres, double majorAxisDegrees) {
    /**
     * By this much the axes grow to hold the point 95 times in 100: √(−2·ln 0.05), derived, the standard errors being
     * known.
     */
    public static final double SCALE_95_PERCENT = 2.4477;

    /**
     * The ellipse of a covariance.
     *
     * @param eastEast variance of east, m²
     * @param eastNorth covariance, m²
     * @param northNorth variance of north, m²
     */
    static ErrorEllipse ofCovariance(double eastEast, double eastNorth, double northNorth) {
        double middle = (eastEast + northNorth) / 2;
        double radius = Math.hypot((eastEast - northNorth) / 2, eastNorth);
        double fromEast = Math.toDegrees(StrictMath.atan2(2 * eastNorth, eastEast - northNorth) / 2);
        double fromNorth = 90 - fromEast;
        return new ErrorEllipse(
                Math.sqrt(middle + radius),
                Math.sqrt(Math.max(0, middle - radius)),
                fromNorth >= 180 ? fromNorth - 180 : fromNorth);
    }

    /** The ellipse that holds the point 95 times in 100. */
    public ErrorEllipse holding95Percent() {
        return new ErrorEllipse(
                SCALE_95_PERCENT * semiMajorMetres, SCALE_95_PERCENT * semiMinorMetres, majorAxisDegrees);
    }

    /** Standard error of the position as one number: the root of the sum of both variances. */
    public double positionErrorMetres() {
        return Math.hypot(semiMajorMetres, semiMinorMetres);
    }
}
