package org.cupwright.green;

import java.time.LocalDate;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Something that lies on the ground of a green on a day and matters to where a hole may go.
 *
 * @param kind what it is
 * @param place a point (for old holes and plugs) or an area, in the course's frame
 * @param since the day it came to be, when known; of old holes the last day on which they were played to
 * @param until the last day it counts; empty while nobody has ended it
 */
public record GroundItem(Kind kind, Geometry place, Optional<LocalDate> since, Optional<LocalDate> until) {
    /** What lies there. */
    public enum Kind {
        /** Where a hole was: its surroundings rest from foot traffic. */
        OLD_HOLE,
        /** A plug whose outline is still visible. */
        PLUG,
        /** Ground that may be used with care. */
        LIGHT_USE,
        /** Ground under repair, newly turfed, diseased: not to be used. */
        OUT_OF_USE,
        /** Ground kept for a coming event. */
        SAVED
    }

    public GroundItem {
        boolean needsPoint = kind == Kind.OLD_HOLE || kind == Kind.PLUG;
        if (place.isEmpty() || needsPoint != (place.getDimension() == 0)) {
            throw new IllegalArgumentException(kind + " needs " + (needsPoint ? "a point" : "an area"));
        }
    }

    /** Whether it still counts on a day. */
    public boolean countsOn(LocalDate day) {
        return until.map(last -> !day.isAfter(last)).orElse(true);
    }
}
