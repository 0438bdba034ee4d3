package org.cupwright.app.maps;

import java.util.List;
import java.util.Locale;
import org.cupwright.course.MapPoint;
import org.cupwright.green.ContourLines;
import org.cupwright.green.ContourLines.Contour;
import org.cupwright.green.Jet;
import org.cupwright.green.ScalarGrid;
import org.cupwright.green.Surface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** Contour lines every 5 cm, every fifth of them thicker and, where there is room, with its height above the lowest line. */
final class ContourLayer {
    private static final double GRID_METRES = 0.25;
    private static final int THICK_EVERY = 5;
    private static final int CENTIMETRES = 100;

    private final GreenDrawing drawing;
    private final MapFrame frame;
    private final MapStyle style;

    ContourLayer(GreenDrawing drawing, MapFrame frame, MapStyle style) {
        this.drawing = drawing;
        this.frame = frame;
        this.style = style;
    }

    void draw(LabelRoom room, Svg svg) {
        if (drawing.surface().isEmpty()) {
            return;
        }
        List<Contour> contours = contours(drawing.surface().get());
        Strokes strokes = new Strokes(frame);
        for (boolean thick : new boolean[] {false, true}) {
            svg.group(thick ? "contour fifth" : "contour", style.stroke(MapStyle.INK, thick ? 1.9 : 0.9));
            contours.stream()
                    .filter(contour -> isThick(contour) == thick)
                    .forEach(contour -> svg.path(strokes.of(contour.lines())));
            svg.end();
        }
        if (style.full() && !contours.isEmpty()) {
            heights(contours, room, svg);
        }
    }

    private List<Contour> contours(Surface surface) {
        Jet jet = new Jet();
        Envelope box = drawing.hole().green().polygon().getEnvelopeInternal();
        ScalarGrid heights = ScalarGrid.sampled(box, GRID_METRES, (east, north) -> {
            surface.at(east, north, jet);
            return drawing.ground().notSurveyed().test(new MapPoint(east, north)) ? Double.NaN : jet.z;
        });
        return ContourLines.every(
                ContourLines.HEIGHT_STEP_METRES, heights, drawing.hole().green());
    }

    private static long step(Contour contour) {
        return Math.round(contour.level() / ContourLines.HEIGHT_STEP_METRES);
    }

    private static boolean isThick(Contour contour) {
        return Math.floorMod(step(contour), THICK_EVERY) == 0;
    }

    private void heights(List<Contour> contours, LabelRoom room, Svg svg) {
        long lowest = step(contours.get(0));
        svg.group("height", MapStyle.fill(MapStyle.INK));
        for (Contour contour : contours) {
            if (isThick(contour)) {
                double metres = (step(contour) - lowest) * ContourLines.HEIGHT_STEP_METRES;
                String label = String.format(Locale.ROOT, "+%d", Math.round(CENTIMETRES * metres));
                height(longest(contour), label, room, svg);
            }
        }
        svg.end();
    }

    private static LineString longest(Contour contour) {
        LineString longest = (LineString) contour.lines().getGeometryN(0);
        for (int i = 1; i < contour.lines().getNumGeometries(); i++) {
            LineString other = (LineString) contour.lines().getGeometryN(i);
            longest = other.getLength() > longest.getLength() ? other : longest;
        }
        return longest;
    }

    private void height(LineString line, String label, LabelRoom room, Svg svg) {
        Label written = new Label(label, style.letters().semibold());
        List<Envelope> boxes = List.of(0.5, 0.35, 0.65, 0.2, 0.8).stream()
                .map(part -> line.getCoordinateN((int) Math.round(part * (line.getNumPoints() - 1))))
                .map(at -> written.about(x(at), y(at)))
                .toList();
        room.take(boxes).ifPresent(box -> written.draw(box, svg));
    }

    private double x(Coordinate at) {
        return frame.x(MapPoint.of(at));
    }

    private double y(Coordinate at) {
        return frame.y(MapPoint.of(at));
    }
}
