package org.cupwright.democourse;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Jet;
import org.cupwright.green.OnConvention;
import org.cupwright.green.Third;
import org.cupwright.units.Paces;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * The ground of an invented green on which its crew cuts holes: by eye, so by plain geometry. Off the edge and what lies beside it,
 * not steep and not broken, and off banks too steep for a ball to stop on.
 *
 * @param spots on a half-metre grid, row by row from the south-west
 */
record SeasonGoodGround(List<Spot> spots) {
    private static final double STEP_METRES = 0.5;
    private static final double EDGE_PACES = 4.3;
    private static final double HAZARD_PACES = 7.5;
    private static final double STEEPEST = 0.028;

    /** The slope may differ by so much within a metre: rise per metre. */
    private static final double EVEN_WITHIN = 0.011;

    private static final double ABOUT_METRES = 1;

    record Spot(MapPoint at, Third third) {}

    static SeasonGoodGround of(Hole hole, MadeSurface surface) {
        GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
        Envelope box = hole.green().polygon().getEnvelopeInternal();
        List<Spot> spots = new ArrayList<>();
        for (double north = Math.ceil(box.getMinY()); north < box.getMaxY(); north += STEP_METRES) {
            for (double east = Math.ceil(box.getMinX()); east < box.getMaxX(); east += STEP_METRES) {
                MapPoint at = new MapPoint(east, north);
                if (isOffEdges(hole, at) && isEven(surface, at)) {
                    spots.add(new Spot(at, frame.place(at).third()));
                }
            }
        }
        return new SeasonGoodGround(List.copyOf(spots));
    }

    private static boolean isOffEdges(Hole hole, MapPoint at) {
        Point point = new GeometryFactory().createPoint(at.toCoordinate());
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

    private static Jet jet(MadeSurface surface, double east, double north) {
        Jet jet = new Jet();
        surface.at(east, north, jet);
        return jet;
    }

    private static double slope(Jet jet) {
        return Math.sqrt(jet.zx * jet.zx + jet.zy * jet.zy);
    }
}
