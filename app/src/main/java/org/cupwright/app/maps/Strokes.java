package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;

/** Path data of shapes, hatching and patterns in the frame of a drawing. */
record Strokes(MapFrame frame) {
    /** Step at which a hatching line looks at the ground, m: half the lattice's. */
    private static final double LOOK_METRES = 0.125;

    /** All lines of a shape, and the rings of its areas closed. */
    String of(Geometry shape) {
        StringBuilder path = new StringBuilder();
        shape.apply((GeometryComponentFilter) part -> {
            if (part instanceof LineString line) {
                line(line, path);
                path.append(part instanceof LinearRing ? "Z" : "");
            }
        });
        return path.toString();
    }

    private void line(LineString line, StringBuilder path) {
        String command = "M";
        for (Coordinate corner : line.getCoordinates()) {
            MapPoint point = MapPoint.of(corner);
            path.append(Svg.data(command, frame.x(point), frame.y(point)));
            command = "L";
        }
    }

    /**
     * Slanted lines, so far apart on the drawing, over the ground that passes: from upper right to lower left, or the
     * other way.
     */
    String hatching(double gap, boolean otherWay, Predicate<MapPoint> ground) {
        StringBuilder path = new StringBuilder();
        double along = gap * Math.sqrt(2);
        for (double start = along / 2; start < frame.width() + frame.height(); start += along) {
            hatch(start, otherWay, ground, path);
        }
        return path.toString();
    }

    /** One line from (start, 0) down to the left, or its mirror image; drawn where the ground passes. */
    private void hatch(double start, boolean otherWay, Predicate<MapPoint> ground, StringBuilder path) {
        double step = frame.length(LOOK_METRES) / Math.sqrt(2);
        boolean drawing = false;
        double down = Math.max(0, start - frame.width());
        double last = down;
        for (; down <= Math.min(frame.height(), start); down += step) {
            boolean draw = ground.test(frame.ground(x(start - down, otherWay), down));
            if (draw != drawing) {
                double end = draw ? down : last;
                path.append(Svg.data(draw ? "M" : "L", x(start - end, otherWay), end));
            }
            drawing = draw;
            last = down;
        }
        path.append(drawing ? Svg.data("L", x(start - last, otherWay), last) : "");
    }

    private double x(double x, boolean mirrored) {
        return mirrored ? frame.width() - x : x;
    }

    /** The points of a staggered pattern, so far apart on the drawing, where the ground passes. */
    List<Coordinate> pattern(double gap, Predicate<MapPoint> ground) {
        List<Coordinate> points = new ArrayList<>();
        int row = 0;
        for (double y = gap / 2; y < frame.height(); y += gap / 2) {
            for (double x = row % 2 == 0 ? 0 : gap / 2; x < frame.width(); x += gap) {
                if (ground.test(frame.ground(x, y))) {
                    points.add(new Coordinate(x, y));
                }
            }
            row++;
        }
        return points;
    }
}
