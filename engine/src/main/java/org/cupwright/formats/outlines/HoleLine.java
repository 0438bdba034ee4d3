package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * A line from tee to hole with what its tags say of the hole (OpenStreetMap wiki, "Tag:golf=hole").
 *
 * @param line in the course's frame
 * @param ref the hole's number or letter
 * @param par par
 * @param distMetres measured length
 * @param where which feature it is
 */
record HoleLine(
        LineOfPlay line,
        List<String> refs,
        Optional<String> loop,
        OptionalInt par,
        OptionalDouble distMetres,
        Message where) {
    private static final double YARD_METRES = 0.9144;
    private static final double FOOT_METRES = 0.3048;
    private static final Pattern LENGTH = Pattern.compile("([0-9]{1,5}(?:[.,][0-9]{1,3})?)\\s*([a-z]*)\\.?");

    /** Pars and lengths outside these are slips; our choice. */
    private static final int LOWEST_PAR = 2;

    private static final int HIGHEST_PAR = 7;
    private static final double SHORTEST_METRES = 20;
    private static final double LONGEST_METRES = 1000;

    /** The line of a golf=hole feature; empty with a finding where it is no line of two different points. */
    static Optional<HoleLine> of(MapFeature feature, Projection toCourse, List<Finding> findings) {
        List<MapPoint> points = feature.shape() instanceof LineString line ? different(line, toCourse) : List.of();
        if (points.size() < 2) {
            findings.add(MapFeature.leftOut(Finding.of(
                    FindingKind.WRONG_SHAPE, feature.where(), feature.shape().getGeometryType())));
            return Optional.empty();
        }
        return Optional.of(new HoleLine(
                new LineOfPlay(points),
                GreenShape.refs(feature.tag("ref")),
                feature.tag(GreenShape.LOOP),
                feature.number("par", LOWEST_PAR, HIGHEST_PAR, FindingKind.PAR_NOT_READABLE, findings),
                distMetres(feature, findings),
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

    /** The tag dist: metres, unless a unit is written. */
    private static OptionalDouble distMetres(MapFeature feature, List<Finding> findings) {
        Optional<String> text = feature.tag("dist");
        double metres = text.map(HoleLine::metres).orElse(Double.NaN);
        if (metres >= SHORTEST_METRES && metres <= LONGEST_METRES) {
            return OptionalDouble.of(metres);
        }
        text.ifPresent(
                slip -> findings.add(Finding.of(FindingKind.LENGTH_NOT_READABLE, feature.where(), Excerpt.of(slip))));
        return OptionalDouble.empty();
    }

    private static double metres(String text) {
        Matcher length = LENGTH.matcher(text.toLowerCase(Locale.ROOT));
        return length.matches()
                ? unitMetres(length.group(2))
                        * Double.parseDouble(length.group(1).replace(',', '.'))
                : Double.NaN;
    }

    private static double unitMetres(String unit) {
        return switch (unit) {
            case "", "m", "metre", "metres", "meter", "meters" -> 1;
            case "y", "yd", "yds", "yard", "yards" -> YARD_METRES;
            case "ft", "feet" -> FOOT_METRES;
            default -> Double.NaN;
        };
    }

    /** Its hole's name: of a hole that is played twice, as in {@code ref=1;10}, the first. */
    Optional<String> ref() {
        return refs.stream().findFirst();
    }

    MapPoint tee() {
        return line.points().get(0);
    }

    MapPoint end() {
        return line.points().get(line.points().size() - 1);
    }
}
