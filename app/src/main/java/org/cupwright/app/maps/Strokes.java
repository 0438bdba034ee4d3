package org.cupwright.app.maps;

import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Path data of shapes, hatching and dots in the frame of a drawing. */
final class Strokes {
    /** Distance between hatching lines on the ground, m. */
    private static final double HATCH_METRES = 0.8;

    /** Step at which a hatching line looks at the ground, m. */
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

    /** Slanted lines over the ground that passes. */
    String hatching(Predicate<MapPoint> ground) {
        StringBuilder path = new StringBuilder();
        double gap = frame.length(HATCH_METRES) * Math.sqrt(2);
        for (double start = gap / 2; start < frame.width() + frame.height(); start += gap) {
            hatch(start, ground, path);
        }
        return path.toString();
    }

    /** One line from (start, 0) down to the left; drawn where the ground passes. */
    private void hatch(double start, Predicate<MapPoint> ground, StringBuilder path) {
        double step = frame.length(LOOK_METRES) / Math.sqrt(2);
        boolean drawing = false;
        for (double down = 0; down <= frame.height() + step; down += step) {
            double x = start - down;
            boolean draw = x >= 0 && x <= frame.width() && ground.test(frame.ground(x, down));
            if (draw != drawing) {
                path.append(draw ? 'M' : 'L').append(Svg.number(x)).append(' ').append(Svg.number(down));
            }
            drawing = draw;
        }
        if (drawing) {
            path.append('L')
                    .append(Svg.number(start - frame.height()))
                    .append(' ')
                    .append(frame.height());
        }
    }

    /** Calls for each point of a staggered pattern where the ground passes. */
    void dots(double spacingMetres, Predicate<MapPoint> ground, DotDrawer drawer) {
        double gap = frame.length(spacingMetres);
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

    /** Draws one dot. */
    @FunctionalInterface
    interface DotDrawer {
        void draw(double x, double y);
    }
}
