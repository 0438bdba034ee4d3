package org.cupwright.holelocation.levelround;

/** A symmetric 2 × 2 matrix (east², east·north, north²): covariance of a gradient. */
record GradientSpread(double east2, double eastNorth, double north2) {
    GradientSpread plus(GradientSpread other) {
        return new GradientSpread(east2 + other.east2, eastNorth + other.eastNorth, north2 + other.north2);
    }

    GradientSpread less(GradientSpread other) {
        return new GradientSpread(east2 - other.east2, eastNorth - other.eastNorth, north2 - other.north2);
    }

    GradientSpread inverse() {
        double determinant = east2 * north2 - eastNorth * eastNorth;
        return new GradientSpread(north2 / determinant, -eastNorth / determinant, east2 / determinant);
    }

    /** Standard deviation along a unit vector. */
    double along(double unitEast, double unitNorth) {
        double variance =
                unitEast * unitEast * east2 + 2 * unitEast * unitNorth * eastNorth + unitNorth * unitNorth * north2;
        return Math.sqrt(Math.max(0, variance));
    }
}
