package org.cupwright.formats.items;

import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;

/**
 * A slope read with a level at one spot of a green.
 *
 * @param holeId the green's hole
 * @param place where the level lay
 * @param heading the direction along which the first reading was taken
 * @param fallPercent how much the ground falls along the heading, percent; negative where it rises
 * @param fallRightPercent the same at right angles, towards the right of the heading; 0 where the heading was the
 *     steepest
 */
public record LevelSpot(String holeId, MapPoint place, Heading heading, double fallPercent, double fallRightPercent) {
    /** Steeper than any spot a level is laid on; a slip of the pen. Our choice. */
    public static final double GREATEST_PERCENT = 40;

    public LevelSpot {
        if (!(Math.hypot(fallPercent, fallRightPercent) <= GREATEST_PERCENT)) {
            throw new IllegalArgumentException(
                    "no green falls " + fallPercent + " % one way and " + fallRightPercent + " % the other");
        }
    }

    /** Rise per metre towards east. */
    public double gradientEast() {
        Heading right = heading.turnedClockwise(90);
        return -(fallPercent * heading.east() + fallRightPercent * right.east()) / 100;
    }

    /** Rise per metre towards north. */
    public double gradientNorth() {
        Heading right = heading.turnedClockwise(90);
        return -(fallPercent * heading.north() + fallRightPercent * right.north()) / 100;
    }
}
