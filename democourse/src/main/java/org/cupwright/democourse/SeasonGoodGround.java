package org.cupwright.democourse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Jet;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Third;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * The ground of an invented green on which its crew cuts holes: by eye, so by plain geometry. Off the edge and what
 * lies beside it, not steep and not broken, and off banks too steep for a ball to stop on.
 *
 * @param spots on a grid of some 0.8 m, row by row from the south-west
 */
record SeasonGoodGround(List<Spot> spots) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** How fine the crew looks (our choice). */
    private static final double STEP_METRES = 0.8;

    /** A little more than the four paces asked for: R&A, Guidance on Running a Competition, ch. 4 (superseded). */
    private static final double EDGE_PACES = 4.1;

    /** From a bunker, water or a fall-off, which lie up to three paces outside the edge (our choice). */
    private static final double HAZARD_PACES = 7.5;

    /** Each hole of a double green keeps at least so far from the line between them (our choice). */
    private static final double OWN_HALF_PACES = 10;

    /** Rise over run (our choice: a little less than the 3 % that is common practice). */
    private static final double STEEPEST = 0.028;

    /** Either component of the slope may differ by so much within a metre (our choice). */
    private static final double EVEN_WITHIN = 0.011;

    private static final double ABOUT_METRES = 1;

    /**
     * Rise over run of a bank that everybody sees (our choice: well above 0.078, on which no ball stops at 10 ft; the
     * low steps of the twelfth are none).
     */
    private static final double BANK = 0.1;

    /** Three paces from such ground: the same guidance as for the edge. */
    private static final double BANK_METRES = 3.05;

    record Spot(MapPoint at, Third third, double edgeMetres) {}

    /** The quarter of a third's spots that lies nearest to the edge; that of all spots where the third has none. */
    List<MapPoint> outer(Third third) {
        List<Spot> in = spots.stream().filter(spot -> spot.third() == third).toList();
        List<Spot> of = in.isEmpty() ? spots : in;
        return of.stream()
                .sorted(Comparator.comparingDouble(Spot::edgeMetres))
                .limit(1 + of.size() / 4)
                .map(Spot::at)
                .toList();
    }

    static SeasonGoodGround of(DemoCourse demo, Hole hole) {
        MadeSurface surface = demo.trueSurface(hole.id());
        GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
        Predicate<MapPoint> ownHalf = ownHalf(demo.course(), hole);
        Envelope box = hole.green().polygon().getEnvelopeInternal();
        List<Spot> spots = new ArrayList<>();
        for (double north = Math.ceil(box.getMinY()); north < box.getMaxY(); north += STEP_METRES) {
            for (double east = Math.ceil(box.getMinX()); east < box.getMaxX(); east += STEP_METRES) {
                MapPoint at = new MapPoint(Math.rint(100 * east) / 100, Math.rint(100 * north) / 100);
                if (ownHalf.test(at) && isOffEdges(hole, at) && isEven(surface, at) && isOffBanks(surface, at)) {
                    spots.add(new Spot(at, frame.place(at).third(), hole.green().distanceToEdgeMetres(at)));
                }
            }
        }
        return new SeasonGoodGround(List.copyOf(spots));
    }

    /**
     * Of a double green the first of its holes in round order has the left half, the other the right one, as the first
     * comes to it.
     */
    private static Predicate<MapPoint> ownHalf(Course course, Hole hole) {
        List<Hole> sharing = course.sharingGreenWith(hole);
        if (sharing.isEmpty()) {
            return at -> true;
        }
        boolean first = course.holes().indexOf(hole) < course.holes().indexOf(sharing.get(0));
        GreenFrame frame = GreenFrame.of(first ? hole : sharing.get(0), OnConvention.ALONG_CHORD)
                .orElseThrow();
        double least = Paces.toMetres(OWN_HALF_PACES, Paces.STANDARD_METRES);
        return at -> (first ? -1 : 1) * frame.rightMetres(at) >= least;
    }

    private static boolean isOffEdges(Hole hole, MapPoint at) {
        Point point = GEOMETRY.createPoint(at.toCoordinate());
        return hole.green().contains(at)
                && hole.green().distanceToEdgeMetres(at) >= Paces.toMetres(EDGE_PACES, Paces.STANDARD_METRES)
                && hole.hazards().stream()
                        .allMatch(hazard ->
                                hazard.area().distance(point) >= Paces.toMetres(HAZARD_PACES, Paces.STANDARD_METRES));
    }

    private static boolean isEven(MadeSurface surface, MapPoint at) {
        Jet own = jet(surface, at.east(), at.north());
        boolean even = slope(own) <= STEEPEST;
        for (int i = -1; i <= 1 && even; i++) {
            for (int j = -1; j <= 1 && even; j++) {
                Jet near = jet(surface, at.east() + i * ABOUT_METRES, at.north() + j * ABOUT_METRES);
                even = slope(near) <= STEEPEST
                        && Math.abs(near.zx - own.zx) <= EVEN_WITHIN
                        && Math.abs(near.zy - own.zy) <= EVEN_WITHIN;
            }
        }
        return even;
    }

    private static boolean isOffBanks(MadeSurface surface, MapPoint at) {
        for (int turn = 0; turn < 360; turn += 30) {
            for (double out = BANK_METRES; out > ABOUT_METRES; out -= ABOUT_METRES) {
                MapPoint near = at.moved(Heading.ofDegrees(turn), out);
                if (slope(jet(surface, near.east(), near.north())) > BANK) {
                    return false;
                }
            }
        }
        return true;
    }

    private static Jet jet(MadeSurface surface, double east, double north) {
        Jet jet = new Jet();
        surface.at(east, north, jet);
        return jet;
    }

    private static double slope(Jet jet) {
        return Math.sqrt(jet.zx * jet.zx + jet.zy * jet.zy);
    }
}
