package org.cupwright.formats.points;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.message.Message;
import org.cupwright.units.LengthUnit;
import org.locationtech.jts.geom.Envelope;

/**
 * How far a file's points reach, in its own numbers, and what may be wrong when they miss every green.
 *
 * <p>The same numbers are tried in other units and with x and y exchanged: where that puts them on the greens, it is
 * said.
 */
final class FileExtent {
    private final CoordinateFrame courseFrame;
    private final CoordinateFrame fileFrame;
    private final Envelope greens = new Envelope();
    private final Envelope numbers = new Envelope();

    FileExtent(Course course, CoordinateFrame fileFrame) {
        this.courseFrame = CoordinateFrame.of(course.frame().epsg());
        this.fileFrame = fileFrame;
        course.holes()
                .forEach(hole -> greens.expandToInclude(hole.green().polygon().getEnvelopeInternal()));
    }

    void include(double x, double y) {
        numbers.expandToInclude(x, y);
    }

    boolean isEmpty() {
        return numbers.isNull();
    }

    Finding whyNotOnTheGreens(Optional<LengthUnit> unit) {
        Message.Argument frame = new Message.Name(fileFrame.toString());
        double away = inCourse(numbers, unit).distance(greens);
        if (away == 0) {
            return Finding.of(FindingKind.NO_POINTS_ON_GREENS, Where.file(), frame);
        }
        for (LengthUnit other : otherUnits(unit)) {
            if (reaches(numbers, Optional.of(other))) {
                return Finding.of(
                                FindingKind.UNIT_LOOKS_WRONG,
                                Where.file(),
                                unit.map(LengthUnit::symbol).orElse(frameUnit()))
                        .trying(other.symbol());
            }
        }
        Envelope exchanged = new Envelope(numbers.getMinY(), numbers.getMaxY(), numbers.getMinX(), numbers.getMaxX());
        if (reaches(exchanged, unit)) {
            return Finding.of(FindingKind.COLUMNS_EXCHANGED, Where.file(), frame);
        }
        return Finding.of(FindingKind.POINTS_FAR_FROM_GREENS, Where.file(), new Message.Length(away))
                .trying(frame);
    }

    private List<LengthUnit> otherUnits(Optional<LengthUnit> unit) {
        if (fileFrame.isGeographic()) {
            return List.of();
        }
        return Arrays.stream(LengthUnit.values())
                .filter(other -> !unit.equals(Optional.of(other)))
                .toList();
    }

    private String frameUnit() {
        return Arrays.stream(LengthUnit.values())
                .filter(unit -> Math.abs(unit.toMetres(1) / fileFrame.unitMetres() - 1) < 1e-9)
                .findFirst()
                .map(LengthUnit::symbol)
                .orElse(fileFrame.toString());
    }

    private boolean reaches(Envelope extent, Optional<LengthUnit> unit) {
        try {
            return inCourse(extent, unit).intersects(greens);
        } catch (UnreadableFile outsideFrame) {
            return false;
        }
    }

    private Envelope inCourse(Envelope extent, Optional<LengthUnit> unit) {
        FileUnits units = new FileUnits(fileFrame, unit, courseFrame);
        Envelope moved = new Envelope();
        for (double x : new double[] {extent.getMinX(), extent.getMaxX()}) {
            for (double y : new double[] {extent.getMinY(), extent.getMaxY()}) {
                MapPoint corner = units.toCourse(x, y);
                moved.expandToInclude(corner.toCoordinate());
            }
        }
        return moved;
    }
}
