package org.cupwright.units;

/**
 * A direction on the map.
 *
 * @param degrees clockwise from the map's north, 0 ≤ degrees &lt; 360
 */
public record Heading(double degrees) {
    public Heading {
        if (!(degrees >= 0 && degrees < 360)) {
            throw new IllegalArgumentException("heading " + degrees + " is outside 0–360 degrees");
        }
    }

    /** The heading for any finite number of degrees, turned into 0–360. */
    public static Heading ofDegrees(double anyDegrees) {
        double turned = anyDegrees % 360;
        double positive = turned < 0 ? turned + 360 : turned;
        return new Heading(positive >= 360 ? 0 : positive);
    }

    /** The heading of the step (east, north); the length of the step does not matter, but it must not be zero. */
    public static Heading ofStep(double east, double north) {
        if (east == 0 && north == 0) {
            throw new IllegalArgumentException("a step of no length has no heading");
        }
        return ofDegrees(Math.toDegrees(StrictMath.atan2(east, north)));
    }

    /** East component of the unit vector. */
    public double east() {
        return StrictMath.sin(Math.toRadians(degrees));
    }

    /** North component of the unit vector. */
    public double north() {
        return StrictMath.cos(Math.toRadians(degrees));
    }

    public Heading turnedClockwise(double byDegrees) {
        return ofDegrees(degrees + byDegrees);
    }
}
