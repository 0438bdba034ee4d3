package org.cupwright.settingout;

import org.cupwright.units.Heading;

/** A way to go from a position on a green, as seen from the fairway. */
public enum Way {
    TO_THE_BACK,
    TO_THE_RIGHT,
    TO_THE_FRONT,
    TO_THE_LEFT;

    /** The way that a heading on the map comes nearest to; half way between two, the one clockwise of it. */
    static Way of(Heading heading, Heading play) {
        double turned = Heading.ofDegrees(heading.degrees() - play.degrees()).degrees();
        return values()[(int) Math.floor((turned + 45) / 90) % 4];
    }
}
