package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The course's own areas: outlined in short strokes, with their numbers; today's in two lines, its number in bold.
 * A small drawing has today's alone. The marks are our own, and as clear in grey.
 */
final class AreaLayer {
    /** How far the second line of today's area is within the first, as a part of the letters' size: our choice. */
    private static final double BETWEEN_EM = 0.28;

    private static final int[][] WAYS = {{0, 0}, {0, 1}, {0, -1}, {1, 0}, {-1, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}};

    private final GreenDrawing drawing;
    private final Canvas canvas;

    AreaLayer(GreenDrawing drawing, Canvas canvas) {
        this.drawing = drawing;
        this.canvas = canvas;
    }

    /** The lines, which lie under all that is written. */
    void lines() {
        for (AreaOnMap area : shown()) {
            Geometry ground = onGreen(area);
            if (area.today()) {
                String paint = MapStyle.stroke(MapStyle.INK, 1.2);
                canvas.outline("area-today", paint, ground);
                Geometry within =
                        ground.buffer(-BETWEEN_EM * em() / canvas.frame().length(1));
                if (!within.isEmpty()) {
                    canvas.outline("area-today-within", paint, within);
                }
            } else {
                canvas.outline("area", MapStyle.broken(MapStyle.INK, 1, 0.25 * em(), 0.4 * em()), ground);
            }
        }
    }

    /** The numbers, each within its area where there is room, else beside it. */
    void numbers() {
        for (AreaOnMap area : shown()) {
            OpenSans letters = area.today() ? OpenSans.SEMIBOLD : OpenSans.REGULAR;
            number(area, letters).ifPresent(box -> canvas.label(letters, area.number(), box));
        }
    }

    private Optional<Envelope> number(AreaOnMap area, OpenSans letters) {
        Geometry ground = onGreen(area);
        MapPoint middle = MapPoint.of(ground.getInteriorPoint().getCoordinate());
        double reach = canvas.frame().length(Math.sqrt(ground.getArea() / Math.PI));
        List<Envelope> boxes = new ArrayList<>();
        for (double gap : new double[] {0, reach / 2, reach}) {
            for (int[] way : WAYS) {
                boxes.add(canvas.box(letters, area.number(), middle, gap, way));
            }
        }
        return canvas.take(boxes);
    }

    private List<AreaOnMap> shown() {
        return drawing.areas().stream()
                .filter(area -> area.today() || canvas.style().full())
                .filter(area -> !onGreen(area).isEmpty()) // else the outline was drawn anew since, and it lies off it
                .toList();
    }

    private Geometry onGreen(AreaOnMap area) {
        return OverlayNGRobust.overlay(area.place(), drawing.hole().green().polygon(), OverlayNG.INTERSECTION);
    }

    private double em() {
        return canvas.em();
    }
}
