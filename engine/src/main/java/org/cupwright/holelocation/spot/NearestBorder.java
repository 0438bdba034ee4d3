package org.cupwright.holelocation.spot;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * How far it is from a point to the nearest of some lines: exactly what {@link Distance#pointToSegment} says of the
 * nearest piece, which is found by squared distances first. For lines of some hundred pieces that is quicker than an
 * index. Safe for use by several threads.
 */
public final class NearestBorder {
    /** Squared distances tell which pieces may be the nearest; rounding makes less of a difference than this. */
    private static final double SLACK = 1 + 1e-6;

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
        double nearestSquared = Double.POSITIVE_INFINITY;
        for (int i = 0; i < borders.size(); i++) {
            if (squaredFromBox(boxes.get(i), from) <= SLACK * nearestSquared) {
                nearestSquared = Math.min(nearestSquared, squared(from, borders.get(i)));
            }
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < borders.size(); i++) {
            if (squaredFromBox(boxes.get(i), from) <= SLACK * nearestSquared) {
                nearest = Math.min(nearest, exact(from, borders.get(i), SLACK * nearestSquared));
            }
        }
        return nearest;
    }

    /** The exact distance to those pieces of a border that are no farther than the nearest but for rounding. */
    private static double exact(Coordinate from, Coordinate[] border, double atMostSquared) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < Math.max(1, border.length - 1); i++) {
            Coordinate end = border[Math.min(i + 1, border.length - 1)];
            if (squared(from, border[i], end) <= atMostSquared) {
                nearest = Math.min(nearest, Distance.pointToSegment(from, border[i], end));
            }
        }
        return nearest;
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
