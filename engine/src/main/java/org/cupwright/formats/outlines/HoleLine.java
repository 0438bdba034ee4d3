package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * A line from tee to hole with what its tags say of the hole.
 *
 * @param line in the course's frame
 * @param ref the hole's number or letter
 * @param par par
 * @param distMetres measured length
 * @param where which feature it is
 */
record HoleLine(LineOfPlay line, Optional<String> ref, OptionalInt par, OptionalDouble distMetres, Message where) {
    /** The line of a golf=hole feature; empty with a finding where it is no line of two different points. */
    static Optional<HoleLine> of(MapFeature feature, Projection toCourse, List<Finding> findings) {
        List<MapPoint> points = feature.shape() instanceof LineString line ? different(line, toCourse) : List.of();
        if (points.size() < 2) {
            Message.Argument found = new Message.Name(feature.shape().getGeometryType());
            findings.add(MapFeature.leftOut(Finding.of(FindingKind.WRONG_SHAPE, feature.where(), found)));
            return Optional.empty();
        }
        return Optional.of(new HoleLine(
                new LineOfPlay(points),
                feature.tag("ref"),
                GolfTags.par(feature, findings),
                GolfTags.distMetres(feature, findings),
                feature.where()));
    }

    private static List<MapPoint> different(LineString line, Projection toCourse) {
        List<MapPoint> points = new ArrayList<>();
        for (Coordinate coordinate : line.getCoordinates()) {
            MapPoint point = toCourse.toCourse(coordinate.x, coordinate.y);
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        return points;
    }

    MapPoint tee() {
        return line.points().get(0);
    }

    MapPoint end() {
        return line.points().get(line.points().size() - 1);
    }
}
