package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.policy.EnumNames;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Ground that is closed, saved or to be spared on the day: its outline and its word, so that nobody takes it for the
 * strip along the edge; closed ground is hatched both ways as well. A small drawing has the word of closed ground only.
 * The marks are our own, and as clear in grey.
 */
final class MarkedLayer {
    /** The gravest first. */
    static final List<Kind> KINDS = List.of(Kind.OUT_OF_USE, Kind.SAVED, Kind.LIGHT_USE);

    private static final int[][] WAYS = {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}};

    private MarkedLayer() {}

    static List<GroundItem> on(GroundOnDay day) {
        return KINDS.stream().flatMap(kind -> day.counting(kind).stream()).toList();
    }

    static void draw(GreenDrawing drawing, Canvas canvas, Texts texts) {
        Outline green = drawing.hole().green();
        for (GroundItem item : drawing.ground().marked()) {
            Geometry ground = OverlayNGRobust.overlay(item.place(), green.polygon(), OverlayNG.INTERSECTION);
            if (!ground.isEmpty()) { // else the outline was drawn anew since, and this lies off it
                area(item.kind(), ground, canvas);
                if (canvas.style().full() || item.kind() == Kind.OUT_OF_USE) {
                    word(texts.say("map.ground." + EnumNames.lowerCamel(item.kind())), ground, canvas);
                }
            }
        }
    }

    private static void area(Kind kind, Geometry ground, Canvas canvas) {
        double em = canvas.em();
        if (kind == Kind.OUT_OF_USE) {
            PreparedGeometry closed = PreparedGeometryFactory.prepare(ground);
            String lines = canvas.strokes().hatching(0.62 * em, true, at -> closed.covers(at.toPoint()));
            canvas.svg()
                    .group("closed-hatching", MapStyle.stroke(MapStyle.INK, 0.8))
                    .path(lines)
                    .end();
        }
        switch (kind) {
            case OUT_OF_USE -> canvas.outline("closed", MapStyle.stroke(MapStyle.INK, 1.8), ground);
            case SAVED ->
                canvas.outline(
                        "saved", MapStyle.broken(MapStyle.INK, 1.4, 0.9 * em, 0.3 * em, "0.1 ", 0.3 * em), ground);
            default -> canvas.outline("light-use", MapStyle.stroke(MapStyle.INK, 0.8), ground);
        }
    }

    /** In its middle, else beside it. */
    private static void word(String word, Geometry ground, Canvas canvas) {
        MapPoint middle = MapPoint.of(ground.getInteriorPoint().getCoordinate());
        List<Envelope> boxes = new ArrayList<>();
        double reach = canvas.frame().length(Math.sqrt(ground.getArea() / Math.PI));
        for (double gap : new double[] {0, reach}) {
            for (int[] way : WAYS) {
                boxes.add(canvas.box(OpenSans.REGULAR, word, middle, gap, way));
            }
        }
        canvas.labelWhereFree(OpenSans.REGULAR, word, boxes);
    }
}
