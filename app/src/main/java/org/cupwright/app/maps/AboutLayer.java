package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What only a drawing of the ground about a green has: the line of play, and the number of each hazard in its list. */
final class AboutLayer {
    private static final double WING_EM = 0.45;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final GreenDrawing drawing;
    private final Canvas canvas;
    private final List<Envelope> boxes = new ArrayList<>();

    /** Takes the room of the numbers before any other label does. */
    AboutLayer(GreenDrawing drawing, Canvas canvas) {
        this.drawing = drawing;
        this.canvas = canvas;
        if (drawing.about()) {
            drawing.hole().hazards().forEach(hazard -> boxes.add(box(hazard, boxes.size() + 1)));
        }
    }

    /** In the middle of what is seen of the hazard. */
    private Envelope box(Hazard hazard, int number) {
        MapFrame frame = canvas.frame();
        Geometry seen = OverlayNGRobust.overlay(hazard.area(), seen(frame), OverlayNG.INTERSECTION);
        Geometry shown = seen.isEmpty() ? hazard.area() : seen;
        MapPoint at = MapPoint.of(shown.getInteriorPoint().getCoordinate());
        Envelope box = canvas.box(OpenSans.SEMIBOLD, Integer.toString(number), at, 0, 0, 0);
        canvas.taken().add(box);
        return box;
    }

    /** The ground that the drawing shows. */
    private Geometry seen(MapFrame frame) {
        double foot = canvas.foot();
        return FACTORY.createPolygon(List.of(
                        frame.ground(0, 0),
                        frame.ground(frame.width(), 0),
                        frame.ground(frame.width(), foot),
                        frame.ground(0, foot),
                        frame.ground(0, 0))
                .stream()
                .map(MapPoint::toCoordinate)
                .toArray(Coordinate[]::new));
    }

    /** From the foot of the drawing to where the line of play ends, its last leg. */
    void line() {
        drawing.hole().lineOfPlay().filter(any -> drawing.about()).ifPresent(this::line);
    }

    private void line(LineOfPlay line) {
        MapPoint end = line.points().get(line.points().size() - 1);
        double em = canvas.em();
        double x = canvas.frame().x(end);
        double y = canvas.frame().y(end);
        double wing = WING_EM * em;
        canvas.svg()
                .group("line", MapStyle.broken(MapStyle.SOFT, 1.4, em, 0.5 * em))
                .path("M", x, canvas.foot(), "V", y)
                .end()
                .group("line-end", MapStyle.stroke(MapStyle.SOFT, 1.4))
                .path("M", x - wing, y + 1.6 * wing, "L", x, y, "l", wing, 1.6 * wing)
                .end();
    }

    void numbers() {
        canvas.svg().group("hazard-number", MapStyle.fill(MapStyle.INK));
        for (int i = 0; i < boxes.size(); i++) {
            canvas.label(OpenSans.SEMIBOLD, Integer.toString(i + 1), boxes.get(i));
        }
        canvas.svg().end();
    }
}
