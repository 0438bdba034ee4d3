package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Suite;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Places against lines cut by the geometry library, and round trips from places back to points, on random invented
 * greens.
 */
class GreenFrameAgainstReferenceIT {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Test
    void chordsAgreeWithTheGeometryLibrary() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("places against cut lines", 20_000, 400);
        for (int i = 0; i < count; i++) {
            Hole hole = RandomGreens.hole(random);
            MapPoint point = RandomGreens.pointOn(hole.green(), random);
            GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
            PlaceOnGreen place = frame.place(point);
            String which = "case " + i + ", seed " + Suite.seed();
            double[] along = ends(hole, point, frame.play());
            assertThat(place.onMetres()).as(which).isCloseTo(along[0], within(1e-5));
            assertThat(place.fromBackMetres()).as(which).isCloseTo(along[1], within(1e-5));
            double[] across = ends(hole, point, frame.play().turnedClockwise(90));
            assertThat(place.sideMetres()).as(which).isCloseTo(Math.min(across[0], across[1]), within(1e-5));
            assertThat(place.side()).as(which).isEqualTo(across[0] <= across[1] ? Side.LEFT : Side.RIGHT);
        }
    }

    /** Distances to the two ends of the piece of a line that holds a point. */
    private static double[] ends(Hole hole, MapPoint point, Heading heading) {
        Geometry cut = FACTORY.createLineString(new Coordinate[] {
                    point.moved(heading, -100).toCoordinate(),
                    point.moved(heading, 100).toCoordinate()
                })
                .intersection(hole.green().polygon());
        LineString nearest = null;
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            LineString piece = (LineString) cut.getGeometryN(i);
            if (nearest == null || distance(piece, point) < distance(nearest, point)) {
                nearest = piece;
            }
        }
        MapPoint start = MapPoint.of(nearest.getCoordinateN(0));
        MapPoint end = MapPoint.of(nearest.getCoordinateN(nearest.getNumPoints() - 1));
        return new double[] {start.distanceMetres(point), end.distanceMetres(point)};
    }

    private static double distance(LineString piece, MapPoint point) {
        return piece.distance(FACTORY.createPoint(point.toCoordinate()));
    }

    /**
     * The place found must be the place asked for, always. It must also be the very point, but for points so close to a
     * straight piece of edge that a whole line of places fits, and for a few in a thousand beside a stretch that is
     * nearly straight.
     */
    @Test
    void everyPlaceLeadsBackToItsPoint() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("places there and back", 10_000, 150);
        int elsewhere = 0;
        for (int i = 0; i < count; i++) {
            Hole hole = RandomGreens.hole(random);
            MapPoint point = RandomGreens.pointOn(hole.green(), random);
            for (OnConvention convention : OnConvention.values()) {
                GreenFrame frame = GreenFrame.of(hole, convention).orElseThrow();
                for (End end : End.values()) {
                    String which = "case " + i + ", " + convention + ", " + end + ", seed " + Suite.seed();
                    boolean back = leadsBack(frame, point, end, which);
                    boolean besideAPiece = hole.green().distanceToEdgeMetres(point) <= longestPieceMetres(hole) / 2;
                    elsewhere += back || besideAPiece ? 0 : 1;
                }
            }
        }
        assertThat(elsewhere)
                .as("of 4 × " + count + ", seed " + Suite.seed())
                .isLessThanOrEqualTo(Math.max(2, count / 250));
    }

    private static boolean leadsBack(GreenFrame frame, MapPoint point, End end, String which) {
        PlaceOnGreen place = frame.place(point);
        double endMetres = end == End.FRONT ? place.onMetres() : place.fromBackMetres();
        List<MapPoint> found = frame.findAll(end, endMetres, place.side(), place.sideMetres());
        assertThat(found).as(which).isNotEmpty();
        for (MapPoint other : found) {
            PlaceOnGreen same = frame.place(other);
            double sameEnd = end == End.FRONT ? same.onMetres() : same.fromBackMetres();
            assertThat(sameEnd).as(which).isCloseTo(endMetres, within(2e-4));
        }
        assertThat(frame.findAll(end, endMetres, place.side(), place.sideMetres()).stream()
                        .findFirst())
                .as(which)
                .contains(found.get(0));
        return found.stream().anyMatch(other -> other.distanceMetres(point) < 0.001);
    }

    private static double longestPieceMetres(Hole hole) {
        Coordinate[] ring = hole.green().polygon().getExteriorRing().getCoordinates();
        double longest = 0;
        for (int i = 1; i < ring.length; i++) {
            longest = Math.max(longest, ring[i].distance(ring[i - 1]));
        }
        return longest;
    }
}
