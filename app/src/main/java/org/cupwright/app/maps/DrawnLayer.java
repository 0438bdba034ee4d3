package org.cupwright.app.maps;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion.Kind;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Ground that people drew: outlined, good ground strewn with ticks and bad ground with crosses; usual spots as
 * diamonds. The marks are our own, and as clear in grey as in colour.
 */
final class DrawnLayer {
    private static final double GAP_EM = 4;
    private static final double SIGN_EM = 0.32;
    private static final double DIAMOND_EM = 0.55;

    private final GreenDrawing drawing;
    private final Canvas canvas;
    private final List<MapPoint> usual;

    /** Takes the room of the usual spots before any label does. */
    DrawnLayer(GreenDrawing drawing, Canvas canvas) {
        this.drawing = drawing;
        this.canvas = canvas;
        this.usual = drawing.drawn().stream()
                .filter(item -> item.word().kind() == Kind.USUAL)
                .map(DrawnItem::middle)
                .toList();
        usual.forEach(at -> canvas.keep(at, DIAMOND_EM * canvas.em()));
    }

    /** The areas, which lie under lines and letters. */
    void areas() {
        for (DrawnItem item : drawing.drawn()) {
            if (item.word().kind() != Kind.USUAL) {
                area(item);
            }
        }
    }

    /** Its outline, and signs all over the ground; on little ground one in its middle. */
    private void area(DrawnItem item) {
        boolean good = item.word().kind() == Kind.GOOD;
        Geometry ground =
                OverlayNGRobust.overlay(item.place(), drawing.hole().green().polygon(), OverlayNG.INTERSECTION);
        if (ground.isEmpty()) {
            return; // the outline was drawn anew since, and this lies off it
        }
        double em = canvas.em();
        String paint =
                good ? MapStyle.stroke(MapStyle.INK, 1.4) : MapStyle.broken(MapStyle.INK, 1.4, 0.45 * em, 0.3 * em);
        canvas.outline(good ? "drawn-good" : "drawn-bad", paint, ground);
        PreparedGeometry clearOfItsEdge = PreparedGeometryFactory.prepare(
                ground.buffer(-2 * SIGN_EM * em / canvas.frame().length(1)));
        List<Coordinate> places =
                canvas.strokes().pattern(GAP_EM * em, point -> clearOfItsEdge.contains(DrawnItem.spot(point)));
        if (places.isEmpty()) {
            MapPoint middle = MapPoint.of(ground.getInteriorPoint().getCoordinate());
            places = List.of(
                    new Coordinate(canvas.frame().x(middle), canvas.frame().y(middle)));
        }
        places.forEach(at -> sign(at.x, at.y, good));
    }

    private void sign(double x, double y, boolean good) {
        double arm = SIGN_EM * canvas.em();
        Svg svg = canvas.svg();
        svg.group("drawn-clear", MapStyle.fill(MapStyle.PAPER))
                .circle(x, y, 1.7 * arm)
                .end();
        svg.group(good ? "tick" : "cross", MapStyle.stroke(MapStyle.INK, 1.6));
        if (good) {
            svg.path("M", x - arm, y, "l", 0.7 * arm, 0.9 * arm, "l", 1.3 * arm, -1.9 * arm);
        } else {
            svg.path("M", x - arm, y - arm, "l", 2 * arm, 2 * arm, "M", x + arm, y - arm, "l", -2 * arm, 2 * arm);
        }
        svg.end();
    }

    /** The usual spots, which lie over lines. */
    void spots() {
        double reach = DIAMOND_EM * canvas.em();
        for (MapPoint at : usual) {
            double left = canvas.frame().x(at) - reach;
            String diamond = Svg.data(
                    "M", left, canvas.frame().y(at), "l", reach, -reach, "l", reach, reach, "l", -reach, reach, "Z");
            canvas.svg()
                    .group("usual-ground", MapStyle.fill(MapStyle.PAPER))
                    .path(diamond)
                    .end()
                    .group("usual", MapStyle.stroke(MapStyle.INK, 1.8))
                    .path(diamond)
                    .end();
        }
    }
}
