package org.cupwright.holelocation.spot;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * How far it is from a point to the nearest of some lines. For lines of some hundred pieces, looking at each by its
 * squared distance is quicker than an index. Safe for use by several threads.
 */
public final class NearestBorder {
    private final List<Coordinate[]> borders;
    private final List<Envelope> boxes = new ArrayList<>();

    /** @param borders the corners of each line, at least one; a line of one corner is a point */
    NearestBorder(List<Coordinate[]> borders) {
        this.borders = List.copyOf(borders);
        for (Coordinate[] border : borders) {
            Envelope box = new Envelope();
            for (Coordinate corner : border) {
                box.expandToInclude(corner);
            }
            boxes.add(box);
        }
    }

    /** The lines and points of a geometry; of areas there must be none. */
    public static NearestBorder of(Geometry lines) {
        List<Coordinate[]> borders = new ArrayList<>();
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            borders.add(lines.getGeometryN(i).getCoordinates());
        }
        return new NearestBorder(borders);
    }

    /** The distance, m; infinite where there are no lines. */
    public double metresFrom(MapPoint at) {
        Coordinate from = at.toCoordinate();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < borders.size(); i++) {
            if (squaredFromBox(boxes.get(i), from) < nearest) {
                nearest = Math.min(nearest, squared(from, borders.get(i)));
            }
        }
        return Math.sqrt(nearest);
    }

    private static double squared(Coordinate from, Coordinate[] border) {
        double nearest = squared(from, border[0], border[0]);
        for (int i = 0; i < border.length - 1; i++) {
            nearest = Math.min(nearest, squared(from, border[i], border[i + 1]));
        }
        return nearest;
    }

    private static double squared(Coordinate from, Coordinate start, Coordinate end) {
        double alongX = end.x - start.x;
        double alongY = end.y - start.y;
        double x = from.x - start.x;
        double y = from.y - start.y;
        double length = alongX * alongX + alongY * alongY;
        double share = length > 0 ? Math.max(0, Math.min(1, (x * alongX + y * alongY) / length)) : 0;
        double dx = x - share * alongX;
        double dy = y - share * alongY;
        return dx * dx + dy * dy;
    }

    private static double squaredFromBox(Envelope box, Coordinate from) {
        double dx = Math.max(0, Math.max(box.getMinX() - from.x, from.x - box.getMaxX()));
        double dy = Math.max(0, Math.max(box.getMinY() - from.y, from.y - box.getMaxY()));
        return dx * dx + dy * dy;
    }
}
