package org.cupwright.course;

import org.locationtech.jts.geom.Polygon;

/**
 * Ground beside a green from which a hole keeps a greater distance.
 *
 * @param kind what it is
 * @param area where it lies, in the course's frame
 */
public record Hazard(Kind kind, Polygon area) {
    /** What lies beside the green. */
    public enum Kind {
        BUNKER,
        WATER,
        FALL_OFF
    }
}
