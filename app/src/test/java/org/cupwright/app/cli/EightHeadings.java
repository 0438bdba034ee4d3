package org.cupwright.app.cli;

/**
 * The eight ways a line of play can run, each with the way that lies to the right of it: written down from the compass,
 * so that no test of what people see has to turn anything.
 */
public enum EightHeadings {
    NORTH(0, 1, 1, 0),
    NORTH_EAST(Slant.OF, Slant.OF, Slant.OF, -Slant.OF),
    EAST(1, 0, 0, -1),
    SOUTH_EAST(Slant.OF, -Slant.OF, -Slant.OF, -Slant.OF),
    SOUTH(0, -1, -1, 0),
    SOUTH_WEST(-Slant.OF, -Slant.OF, -Slant.OF, Slant.OF),
    WEST(-1, 0, 0, 1),
    NORTH_WEST(-Slant.OF, Slant.OF, Slant.OF, Slant.OF);

    private final double aheadEast;
    private final double aheadNorth;
    private final double rightEast;
    private final double rightNorth;

    EightHeadings(double aheadEast, double aheadNorth, double rightEast, double rightNorth) {
        this.aheadEast = aheadEast;
        this.aheadNorth = aheadNorth;
        this.rightEast = rightEast;
        this.rightNorth = rightNorth;
    }

    /** Half way between two ways of the compass. */
    private static final class Slant {
        static final double OF = 0.7071067811865476;
    }

    /** How far east so many metres to the right and so many ahead lead. */
    public double east(double right, double ahead) {
        return right * rightEast + ahead * aheadEast;
    }

    /** How far north so many metres to the right and so many ahead lead. */
    public double north(double right, double ahead) {
        return right * rightNorth + ahead * aheadNorth;
    }
}
