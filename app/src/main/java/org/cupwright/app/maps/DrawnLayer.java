package org.cupwright.app.maps;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion.Kind;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Ground that people drew: outlined, good ground strewn with ticks and bad ground with crosses; usual spots as diamonds. The marks
 * are our own, and as clear in grey as in colour.
 */
final class DrawnLayer {
    private static final double GAP_EM = 4;
    private static final double SIGN_EM = 0.32;
    private static final double DIAMOND_EM = 0.55;

    private final GreenDrawing drawing;
    private final MapFrame frame;
    private final MapStyle style;

    DrawnLayer(GreenDrawing drawing, MapFrame frame, MapStyle style) {
        this.drawing = drawing;
        this.frame = frame;
        this.style = style;
    }

    /** Room that no label may take: that of the usual spots. */
    void keep(LabelRoom room) {
        usual().forEach(at -> room.keep(frame.x(at), frame.y(at), DIAMOND_EM * style.em()));
    }

    /** The areas, which lie under lines and letters. */
    void areas(Strokes strokes, Svg svg) {
        for (DrawnItem item : drawing.drawn()) {
            if (item.word().kind() != Kind.USUAL) {
                area(item, strokes, svg);
            }
        }
    }

    private void area(DrawnItem item, Strokes strokes, Svg svg) {
        boolean good = item.word().kind() == Kind.GOOD;
        Geometry onGreen =
                OverlayNGRobust.overlay(item.place(), drawing.hole().green().polygon(), OverlayNG.INTERSECTION);
        if (onGreen.isEmpty()) {
            return; // the outline was drawn anew since, and this lies off it
        }
        svg.group(good ? "drawn-good" : "drawn-bad", style.stroke(MapStyle.INK, 1.4) + (good ? "" : dashes()))
                .path(strokes.of(onGreen))
                .end();
        signs(onGreen, good, strokes, svg);
    }

    private String dashes() {
        double em = style.em();
        return " stroke-dasharray=\"" + Svg.number(0.45 * em) + " " + Svg.number(0.3 * em) + "\"";
    }

    /** All over the ground; on little ground one in its middle. */
    private void signs(Geometry ground, boolean good, Strokes strokes, Svg svg) {
        Geometry clearOfItsEdge = ground.buffer(-2 * SIGN_EM * style.em() / frame.length(1));
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(clearOfItsEdge);
        Predicate<MapPoint> inside = point -> prepared.contains(DrawnItem.spot(point));
        AtomicInteger drawn = new AtomicInteger();
        strokes.pattern(GAP_EM * style.em(), inside, (x, y) -> {
            sign(x, y, good, svg);
            drawn.incrementAndGet();
        });
        if (drawn.get() == 0) {
            MapPoint middle = MapPoint.of(ground.getInteriorPoint().getCoordinate());
            sign(frame.x(middle), frame.y(middle), good, svg);
        }
    }

    private void sign(double x, double y, boolean good, Svg svg) {
        double arm = SIGN_EM * style.em();
        svg.group("drawn-clear", MapStyle.fill(MapStyle.PAPER))
                .circle(x, y, 1.7 * arm)
                .end();
        svg.group(good ? "tick" : "cross", style.stroke(MapStyle.INK, 1.6))
                .path(good ? tick(x, y, arm) : cross(x, y, arm))
                .end();
    }

    private static String tick(double x, double y, double arm) {
        return move(x - arm, y) + step(0.7 * arm, 0.9 * arm) + step(1.3 * arm, -1.9 * arm);
    }

    private static String cross(double x, double y, double arm) {
        return move(x - arm, y - arm) + step(2 * arm, 2 * arm) + move(x + arm, y - arm) + step(-2 * arm, 2 * arm);
    }

    private static String move(double x, double y) {
        return "M" + Svg.number(x) + " " + Svg.number(y);
    }

    private static String step(double right, double down) {
        return "l" + Svg.number(right) + " " + Svg.number(down);
    }

    /** The usual spots, which lie over lines. */
    void spots(Svg svg) {
        double reach = DIAMOND_EM * style.em();
        for (MapPoint at : usual()) {
            String diamond = move(frame.x(at) - reach, frame.y(at)) + step(reach, -reach) + step(reach, reach)
                    + step(-reach, reach) + "Z";
            svg.group("usual-ground", MapStyle.fill(MapStyle.PAPER))
                    .path(diamond)
                    .end();
            svg.group("usual", style.stroke(MapStyle.INK, 1.8)).path(diamond).end();
        }
    }

    private List<MapPoint> usual() {
        return drawing.drawn().stream()
                .filter(item -> item.word().kind() == Kind.USUAL)
                .map(DrawnItem::middle)
                .toList();
    }
}
