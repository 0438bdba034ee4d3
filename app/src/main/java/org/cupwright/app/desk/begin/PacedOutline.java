package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.storage.SettingUp.Paced;
import org.cupwright.app.storage.SettingUp.Row;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The outline of a green by offsets from a line between its front and its back.
 *
 * <p>The edge is drawn round through the measured points by a closed Catmull–Rom curve of centripetal knots, which has
 * neither loops nor cusps between two points (Yuksel, Schaefer, Keyser, "Parameterization and applications of
 * Catmull–Rom curves", Computer-Aided Design 43, 2011; recalled). Straight lines would cut the bends off: of an oval
 * measured at five places they lose 7 % of the ground.
 */
final class PacedOutline {
    /** Corners drawn from one measured point to the next: our choice, a few decimetres off the curve at most. */
    private static final int CORNERS = 6;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private PacedOutline() {}

    /**
     * The outline with the line's beginning at a place, in the course's frame; valid or not, as the measures are.
     *
     * @param paced two rows at least, none further on than the line is long
     */
    static Polygon of(Paced paced, MapPoint front) {
        List<Coordinate> ring = new ArrayList<>();
        List<Coordinate> measured = measured(paced);
        for (int i = 0; i < measured.size(); i++) {
            for (int part = 0; part < CORNERS; part++) {
                Coordinate at = curve(measured, i, part / (double) CORNERS);
                ring.add(placed(at, paced, front).toCoordinate());
            }
        }
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** Metres to the right and on, clockwise from the front; both ends of the line are on the edge. */
    private static List<Coordinate> measured(Paced paced) {
        double unit = paced.unitMetres();
        List<Coordinate> all = new ArrayList<>();
        List<Row> rows = paced.rows();
        add(all, 0, 0);
        for (Row row : rows) {
            add(all, -row.left() * unit, row.on() * unit);
        }
        add(all, 0, paced.length() * unit);
        for (int i = rows.size() - 1; i >= 0; i--) {
            add(all, rows.get(i).right() * unit, rows.get(i).on() * unit);
        }
        if (all.size() > 1 && all.get(0).equals2D(all.get(all.size() - 1))) {
            all.remove(all.size() - 1);
        }
        return all;
    }

    /** What is measured twice is one point. */
    private static void add(List<Coordinate> all, double right, double on) {
        Coordinate next = new Coordinate(right, on);
        if (all.isEmpty() || !all.get(all.size() - 1).equals2D(next)) {
            all.add(next);
        }
    }

    /** A point of the curve from one measured point to the next, by Barry and Goldman's pyramid. */
    private static Coordinate curve(List<Coordinate> ring, int from, double share) {
        Coordinate[] p = new Coordinate[4];
        for (int i = 0; i < p.length; i++) {
            p[i] = ring.get(Math.floorMod(from - 1 + i, ring.size()));
        }
        double[] t = new double[4];
        for (int i = 1; i < t.length; i++) {
            t[i] = t[i - 1] + Math.sqrt(p[i].distance(p[i - 1]));
        }
        double at = t[1] + share * (t[2] - t[1]);
        Coordinate a1 = between(p[0], p[1], t[0], t[1], at);
        Coordinate a2 = between(p[1], p[2], t[1], t[2], at);
        Coordinate a3 = between(p[2], p[3], t[2], t[3], at);
        Coordinate b1 = between(a1, a2, t[0], t[2], at);
        Coordinate b2 = between(a2, a3, t[1], t[3], at);
        return between(b1, b2, t[1], t[2], at);
    }

    private static Coordinate between(Coordinate a, Coordinate b, double from, double to, double at) {
        double share = (at - from) / (to - from);
        return new Coordinate(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
    }

    private static MapPoint placed(Coordinate at, Paced paced, MapPoint front) {
        return front.moved(paced.along(), at.y).moved(paced.along().turnedClockwise(90), at.x);
    }
}
