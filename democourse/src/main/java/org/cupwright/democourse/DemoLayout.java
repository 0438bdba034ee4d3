package org.cupwright.democourse;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.MadeSurface;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Lays an invented hole on the map: from the green's own frame (x right, y along play) to the course's.
 *
 * @param hole the hole's plan
 * @param frame the line of play at the green whose frame the green's shape and ground are drawn in: its own, but for
 *     the second hole of a double green, which takes the first one's
 */
record DemoLayout(DemoHole hole, DemoHole frame) {
    /** The map's lower left corner, about which the holes' plans are drawn. */
    static final MapPoint CORNER = new MapPoint(500_000, 5_316_000);

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int CORNERS = 72;

    List<MapPoint> line() {
        return points(hole);
    }

    private static List<MapPoint> points(DemoHole of) {
        return of.line().stream()
                .map(point -> new MapPoint(CORNER.east() + point.east(), CORNER.north() + point.north()))
                .toList();
    }

    Heading play() {
        List<MapPoint> points = points(frame);
        MapPoint before = points.get(points.size() - 2);
        MapPoint end = points.get(points.size() - 1);
        return Heading.ofStep(end.east() - before.east(), end.north() - before.north());
    }

    MapPoint middle() {
        List<MapPoint> points = line();
        return points.get(points.size() - 1);
    }

    /** A point of the green's frame on the map. */
    MapPoint at(double x, double y) {
        Heading play = play();
        return middle().moved(play, y).moved(play.turnedClockwise(90), x);
    }

    /** The edge's distance from the green's middle in a direction, degrees clockwise from the line of play. */
    double radius(double turnDegrees) {
        DemoHole.Shape shape = hole.shape();
        double turn = Math.toRadians(turnDegrees);
        double across = StrictMath.sin(turn) / shape.halfWidth();
        double along = StrictMath.cos(turn) / shape.halfDepth();
        double ellipse = 1 / Math.sqrt(across * across + along * along);
        double two = shape.waveTwo() * StrictMath.cos(2 * (turn - Math.toRadians(shape.turnTwo())));
        double three = shape.waveThree() * StrictMath.cos(3 * (turn - Math.toRadians(shape.turnThree())));
        return ellipse * (1 + two + three);
    }

    private Coordinate around(double turnDegrees, double distance) {
        return middle().moved(play().turnedClockwise(turnDegrees), distance).toCoordinate();
    }

    Polygon outline() {
        Coordinate[] ring = new Coordinate[CORNERS + 1];
        for (int i = 0; i < CORNERS; i++) {
            double turn = 360.0 * i / CORNERS;
            ring[i] = around(turn, radius(turn));
        }
        ring[CORNERS] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    /** A hazard as a band that follows the green's edge. */
    Polygon beside(DemoHole.Beside hazard) {
        double middleRadius = radius(hazard.turn()) + hazard.gap();
        double halfSpread = Math.toDegrees(hazard.length() / 2 / middleRadius);
        int steps = 8;
        Coordinate[] ring = new Coordinate[2 * steps + 3];
        for (int i = 0; i <= steps; i++) {
            double turn = hazard.turn() + halfSpread * (2.0 * i / steps - 1);
            double edge = radius(turn) + hazard.gap();
            ring[i] = around(turn, edge);
            ring[2 * steps + 1 - i] = around(turn, edge + 4);
        }
        ring[2 * steps + 2] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }

    /** A small square tee at the start of the line, moved back along it. */
    Polygon tee(double backMetres) {
        List<MapPoint> points = line();
        MapPoint start = points.get(0);
        Heading away = Heading.ofStep(
                start.east() - points.get(1).east(),
                start.north() - points.get(1).north());
        MapPoint at = start.moved(away, backMetres);
        Heading right = away.turnedClockwise(90);
        Coordinate[] ring = {
            at.moved(right, -4).toCoordinate(),
            at.moved(right, 4).toCoordinate(),
            at.moved(right, 4).moved(away, 8).toCoordinate(),
            at.moved(right, -4).moved(away, 8).toCoordinate(),
            at.moved(right, -4).toCoordinate()
        };
        return FACTORY.createPolygon(ring);
    }

    /** The ground's true form on the map. */
    MadeSurface surface(double heightMetres) {
        MapPoint middle = middle();
        double play = play().degrees();
        List<MadeSurface.Bump> bumps = new ArrayList<>();
        List<MadeSurface.Tier> tiers = new ArrayList<>();
        double east = 0;
        double north = 0;
        Heading along = play();
        Heading right = along.turnedClockwise(90);
        for (DemoHole.Feature feature : hole.ground()) {
            if (feature instanceof DemoHole.Tilt tilt) {
                east += tilt.rightPercent() / 100 * right.east() + tilt.backPercent() / 100 * along.east();
                north += tilt.rightPercent() / 100 * right.north() + tilt.backPercent() / 100 * along.north();
            } else if (feature instanceof DemoHole.Rise rise) {
                MapPoint at = at(rise.x(), rise.y());
                bumps.add(new MadeSurface.Bump(at.east(), at.north(), rise.height(), rise.width()));
            } else if (feature instanceof DemoHole.Bank bank) {
                MapPoint at = at(bank.x(), bank.y());
                Heading up = Heading.ofDegrees(play + bank.turn());
                tiers.add(new MadeSurface.Tier(
                        at.east(), at.north(), up.east(), up.north(), bank.height(), bank.width()));
            }
        }
        double atOrigin = heightMetres - east * middle.east() - north * middle.north();
        return new MadeSurface(atOrigin, east, north, bumps, tiers);
    }
}
