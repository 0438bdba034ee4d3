package org.cupwright.app.maps;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.ContourLines;
import org.cupwright.green.ContourLines.Contour;
import org.cupwright.green.Jet;
import org.cupwright.green.ScalarGrid;
import org.cupwright.green.Surface;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * Contour lines every 5 cm, every fifth of them thicker and, where there is room, with its height above the lowest
 * line.
 */
final class ContourLayer {
    private static final double GRID_METRES = 0.25;
    private static final int THICK_EVERY = 5;
    private static final int CENTIMETRES = 100;

    private ContourLayer() {}

    static void draw(GreenDrawing drawing, Canvas canvas) {
        drawing.surface().ifPresent(surface -> lines(contours(drawing, surface), canvas));
    }

    private static List<Contour> contours(GreenDrawing drawing, Surface surface) {
        Jet jet = new Jet();
        Envelope box = drawing.hole().green().polygon().getEnvelopeInternal();
        ScalarGrid heights = ScalarGrid.sampled(box, GRID_METRES, (east, north) -> {
            surface.at(east, north, jet);
            return drawing.ground().notSurveyed().test(new MapPoint(east, north)) ? Double.NaN : jet.z;
        });
        return ContourLines.every(
                ContourLines.HEIGHT_STEP_METRES, heights, drawing.hole().green());
    }

    private static void lines(List<Contour> contours, Canvas canvas) {
        Strokes strokes = canvas.strokes();
        List<Contour> thick = contours.stream().filter(ContourLayer::isThick).toList();
        canvas.svg().group("contour", MapStyle.stroke(MapStyle.INK, 0.9));
        contours.stream()
                .filter(contour -> !isThick(contour))
                .forEach(contour -> canvas.svg().path(strokes.of(contour.lines())));
        canvas.svg().end().group("contour fifth", MapStyle.stroke(MapStyle.INK, 1.9));
        thick.forEach(contour -> canvas.svg().path(strokes.of(contour.lines())));
        canvas.svg().end();
        if (canvas.style().full() && !contours.isEmpty()) {
            canvas.svg().group("height", MapStyle.fill(MapStyle.INK));
            thick.forEach(contour -> height(contour, step(contour) - step(contours.get(0)), canvas));
            canvas.svg().end();
        }
    }

    private static long step(Contour contour) {
        return Math.round(contour.level() / ContourLines.HEIGHT_STEP_METRES);
    }

    private static boolean isThick(Contour contour) {
        return Math.floorMod(step(contour), THICK_EVERY) == 0;
    }

    /** Writes so many steps as a height on the longest line, near its middle or where else there is room. */
    private static void height(Contour contour, long steps, Canvas canvas) {
        long centimetres = Math.round(CENTIMETRES * (steps * ContourLines.HEIGHT_STEP_METRES));
        String label = String.format(Locale.ROOT, "+%d", centimetres);
        LineString line = longest(contour.lines());
        List<Envelope> boxes = Stream.of(0.5, 0.35, 0.65, 0.2, 0.8)
                .map(part -> MapPoint.of(line.getCoordinateN((int) Math.round(part * (line.getNumPoints() - 1)))))
                .map(at -> canvas.box(OpenSans.SEMIBOLD, label, at, 0, 0, 0))
                .toList();
        canvas.labelWhereFree(OpenSans.SEMIBOLD, label, boxes);
    }

    /** The longest line, of several as long the first. */
    private static LineString longest(Geometry lines) {
        return IntStream.range(0, lines.getNumGeometries())
                .mapToObj(i -> (LineString) lines.getGeometryN(i))
                .reduce((one, other) -> other.getLength() > one.getLength() ? other : one)
                .orElseThrow();
    }
}
