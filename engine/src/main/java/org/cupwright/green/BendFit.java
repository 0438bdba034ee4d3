package org.cupwright.green;

/**
 * How the slope changes about a spot, with its error: the second derivatives of a quadratic fitted over a disc.
 *
 * <p>The change of slope in a direction u is {@code 100·D·u'Hu}, in percentage points over the disc's diameter D. The
 * greatest of them over all directions reads high by about one standard error on even ground, so it is never shown
 * without its error.
 *
 * @param east2 second derivative along east, 1/m
 * @param eastNorth mixed second derivative, 1/m
 * @param north2 second derivative along north, 1/m
 * @param covariance covariance of the three
 * @param discRadiusMetres radius of the disc
 */
public record BendFit(double east2, double eastNorth, double north2, Covariance covariance, double discRadiusMetres) {
    /** Covariance of (east2, eastNorth, north2): the upper triangle of a symmetric 3 × 3 matrix, row by row, 1/m². */
    public record Covariance(
            double east2East2,
            double east2EastNorth,
            double east2North2,
            double eastNorthEastNorth,
            double eastNorthNorth2,
            double north2North2) {}

    /** A change of slope in percentage points over the disc's diameter, and its standard error. */
    public record Change(double points, double standardErrorPoints) {}

    /** The signed change along a unit vector; positive where the ground curves upwards. */
    public Change along(double unitEast, double unitNorth) {
        double a = unitEast * unitEast;
        double b = 2 * unitEast * unitNorth;
        double c = unitNorth * unitNorth;
        double bend = a * east2 + b * eastNorth + c * north2;
        double variance = a * a * covariance.east2East2
                + b * b * covariance.eastNorthEastNorth
                + c * c * covariance.north2North2
                + 2
                        * (a * b * covariance.east2EastNorth
                                + a * c * covariance.east2North2
                                + b * c * covariance.eastNorthNorth2);
        double toPoints = 200 * discRadiusMetres;
        return new Change(toPoints * bend, toPoints * Math.sqrt(Math.max(0, variance)));
    }

    /** The change in the direction in which it is greatest in size, signed, with the error of that direction. */
    public Change greatest() {
        double middle = (east2 + north2) / 2;
        double half = (east2 - north2) / 2;
        double radius = Math.hypot(half, eastNorth);
        double eigenvalue = middle >= 0 ? middle + radius : middle - radius;
        double turn = Math.atan2(eastNorth, half) / 2;
        double angle = eigenvalue >= middle ? turn : turn + Math.PI / 2;
        return along(Math.cos(angle), Math.sin(angle));
    }
}
