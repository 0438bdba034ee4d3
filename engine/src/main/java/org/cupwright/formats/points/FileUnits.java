package org.cupwright.formats.points;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.units.LengthUnit;

/**
 * Takes a file's numbers to the course's: x and y by unit and frame, z by unit.
 *
 * <p>Where the unit is not said it is the frame's own; where it is said and differs, x and y are turned into the
 * frame's unit first. Degrees have no unit of length, so there the unit counts for z alone.
 */
final class FileUnits {
    private final double heightMetres;
    private final double toFrameUnit;
    private final Projection toCourse;

    FileUnits(CoordinateFrame frame, Optional<LengthUnit> unit, CoordinateFrame course) {
        double unitMetres = unit.map(u -> u.toMetres(1)).orElse(frame.unitMetres());
        this.heightMetres = unitMetres;
        this.toFrameUnit = frame.isGeographic() ? 1 : unitMetres / frame.unitMetres();
        this.toCourse = Projection.between(frame, course);
    }

    MapPoint toCourse(double x, double y) {
        return toCourse.toCourse(x * toFrameUnit, y * toFrameUnit);
    }

    double heightMetres(double z) {
        return z * heightMetres;
    }
}
