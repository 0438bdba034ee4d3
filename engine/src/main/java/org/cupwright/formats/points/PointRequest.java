package org.cupwright.formats.points;

import java.util.Optional;
import java.util.Set;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.units.LengthUnit;

/**
 * What a person says of a file of points.
 *
 * @param frame the frame its x and y are in; empty: the course's own
 * @param unit the unit of x, y and z; empty: the frame's own unit
 * @param classes the classes wanted; empty: all
 */
public record PointRequest(Optional<CoordinateFrame> frame, Optional<LengthUnit> unit, Set<Integer> classes) {
    public PointRequest {
        classes = Set.copyOf(classes);
    }

    /** Points in the course's own frame, in metres, of all classes. */
    public static PointRequest asTheCourse() {
        return new PointRequest(Optional.empty(), Optional.empty(), Set.of());
    }

    public PointRequest in(CoordinateFrame other) {
        return new PointRequest(Optional.of(other), unit, classes);
    }

    public PointRequest in(LengthUnit other) {
        return new PointRequest(frame, Optional.of(other), classes);
    }

    public PointRequest ofClasses(Integer... wanted) {
        return new PointRequest(frame, unit, Set.of(wanted));
    }
}
