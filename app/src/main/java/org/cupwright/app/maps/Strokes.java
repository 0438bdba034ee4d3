package org.cupwright.app.maps;

import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Path data of shapes, hatching and patterns in the frame of a drawing. */
final class Strokes {
    /** Step at which a hatching line looks at the ground, m: half the lattice's. */
    private static final double LOOK_METRES = 0.125;

    private final MapFrame frame;

    Strokes(MapFrame frame) {
        this.frame = frame;
    }

    String of(Geometry shape) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            Geometry part = shape.getGeometryN(i);
            if (part instanceof Polygon polygon) {
                ring(polygon.getExteriorRing(), path);
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    ring(polygon.getInteriorRingN(k), path);
                }
            } else if (part instanceof LineString line) {
                line(line, path);
            }
        }
        return path.toString();
    }

    private void ring(LineString ring, StringBuilder path) {
        line(ring, path);
        path.append('Z');
    }

    private void line(LineString line, StringBuilder path) {
        char command = 'M';
        for (Coordinate corner : line.getCoordinates()) {
            point(command, MapPoint.of(corner), path);
            command = 'L';
        }
    }

    private void point(char command, MapPoint point, StringBuilder path) {
        path.append(command).append(Svg.number(frame.x(point)));
        path.append(' ').append(Svg.number(frame.y(point)));
    }

    /** Slanted lines, so far apart on the drawing, over the ground that passes. */
    String hatching(double gap, Predicate<MapPoint> ground) {
        StringBuilder path = new StringBuilder();
        double along = gap * Math.sqrt(2);
        for (double start = along / 2; start < frame.width() + frame.height(); start += along) {
            hatch(start, ground, path);
        }
        return path.toString();
    }

    /** One line from (start, 0) down to the left; drawn where the ground passes. */
    private void hatch(double start, Predicate<MapPoint> ground, StringBuilder path) {
        double step = frame.length(LOOK_METRES) / Math.sqrt(2);
        boolean drawing = false;
        double down = Math.max(0, start - frame.width());
        double last = down;
        for (; down <= Math.min(frame.height(), start); down += step) {
            boolean draw = ground.test(frame.ground(start - down, down));
            if (draw != drawing) {
                end(draw ? 'M' : 'L', start, draw ? down : last, path);
            }
            drawing = draw;
            last = down;
        }
        if (drawing) {
            end('L', start, last, path);
        }
    }

    private static void end(char command, double start, double down, StringBuilder path) {
        path.append(command).append(Svg.number(start - down)).append(' ').append(Svg.number(down));
    }

    /** Calls for each point of a staggered pattern, so far apart on the drawing, where the ground passes. */
    void pattern(double gap, Predicate<MapPoint> ground, PointDrawer drawer) {
        int row = 0;
        for (double y = gap / 2; y < frame.height(); y += gap / 2) {
            for (double x = row % 2 == 0 ? 0 : gap / 2; x < frame.width(); x += gap) {
                if (ground.test(frame.ground(x, y))) {
                    drawer.draw(x, y);
                }
            }
            row++;
        }
    }

    /** Draws something at a point. */
    @FunctionalInterface
    interface PointDrawer {
        void draw(double x, double y);
    }
}
