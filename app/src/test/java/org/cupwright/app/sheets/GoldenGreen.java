package org.cupwright.app.sheets;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.cupwright.app.cli.EightHeadings;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * An invented green shaped like an L, with one bunker on its left and one mark on its right, played in one of eight
 * directions. Everything is written down as a person on the fairway sees it: metres to the right of the line of play
 * and metres beyond the front.
 */
record GoldenGreen(EightHeadings play) {
    /** The frame it lies in: UTM zone 26 north, whose middle meridian, 27° W, is at 500 000 m. */
    static final int EPSG = 32626;

    static final double EAST = 500_000;
    static final double NORTH = 4_400_000;

    /** From the front's left corner, anticlockwise. */
    static final List<Point2D> CORNERS =
            List.of(seen(-12, 0), seen(14, 0), seen(14, 14), seen(4, 14), seen(4, 30), seen(-12, 30));

    static final List<Point2D> BUNKER = List.of(seen(-17, 8), seen(-14, 8), seen(-14, 13), seen(-17, 13));
    /** Two areas that the course has numbers for: the front of the left arm, and its back. */
    static final List<Point2D> AREA_7 = List.of(seen(-11, 1), seen(-1, 1), seen(-1, 12), seen(-11, 12));

    static final List<Point2D> AREA_2 = List.of(seen(-11, 16), seen(3, 16), seen(3, 29), seen(-11, 29));

    static final Point2D MARK = seen(9, 18);
    static final Point2D SPOT = seen(-4, 9);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    static Point2D seen(double right, double ahead) {
        return new Point2D.Double(right, ahead);
    }

    /** East and north of the green's origin, m. */
    Point2D onMap(Point2D seen) {
        return new Point2D.Double(play.east(seen.getX(), seen.getY()), play.north(seen.getX(), seen.getY()));
    }

    MapPoint at(Point2D seen) {
        return new MapPoint(EAST + onMap(seen).getX(), NORTH + onMap(seen).getY());
    }

    Hole hole() {
        return new Hole(
                Integer.toString(play.ordinal() + 1),
                new Outline(polygon(CORNERS)),
                Optional.of(new LineOfPlay(List.of(at(seen(0, -300)), at(seen(0, 15))))),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(new Hazard(Hazard.Kind.BUNKER, polygon(BUNKER))),
                List.of(),
                List.of(new Mark(Mark.Kind.SPRINKLER_HEAD, "head", at(MARK))),
                List.of());
    }

    Polygon polygon(List<Point2D> corners) {
        return FACTORY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(corner -> new Coordinate(at(corner).east(), at(corner).north()))
                .toArray(Coordinate[]::new));
    }
}
