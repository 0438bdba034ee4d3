package org.cupwright.app.maps;

import java.util.List;
import java.util.function.Predicate;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.green.ContourLines;
import org.cupwright.green.ScalarGrid;
import org.locationtech.jts.geom.Envelope;

/**
 * Draws a green: contour lines every 5 cm, ground not to be cut hatched, resting ground dotted, free ground left clear; hazards,
 * old holes, today's spot, the line of play upwards, north and a scale.
 *
 * <p>Ink on paper, one accent for today's spot; nothing is told by colour alone. The look is our own.
 */
public final class GreenMap {
    private static final String INK = "#25221d";
    private static final String SOFT = "#8a8172";
    private static final String ACCENT = "#a4431d";
    private static final double CONTOUR_GRID_METRES = 0.5;
    private static final double DOT_METRES = 1.0;
    private static final int HUNDRED = 100;

    private final Texts texts;

    public GreenMap(Texts texts) {
        this.texts = texts;
    }

    /** The drawing as an SVG document, so many drawing units wide and high. */
    public String draw(GreenDrawing drawing, int width, int height) {
        MapFrame frame = new MapFrame(drawing.hole(), width, height);
        Strokes strokes = new Strokes(frame);
        double unit = Math.min(width, height) / (double) HUNDRED;
        Svg svg = new Svg(width, height, texts.say("map.title", drawing.hole().id()));
        hazards(drawing, strokes, unit, svg);
        ground(drawing, strokes, unit, svg);
        contours(drawing, strokes, unit, svg);
        svg.group("edge", stroke(INK, 0.6 * unit))
                .path(strokes.of(drawing.hole().green().polygon()))
                .end();
        labels("old-hole", drawing.oldHoles(), frame, unit, svg);
        labels("slope", drawing.slopes(), frame, unit, svg);
        marks(drawing.hole().marks(), frame, unit, svg);
        spots(drawing.spots(), frame, unit, svg);
        new MapLegend(frame, unit).draw(drawing.hole().lineOfPlay().isPresent(), svg);
        return svg.done();
    }

    private static String stroke(String colour, double width) {
        return "fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + Svg.number(width)
                + "\" stroke-linejoin=\"round\" stroke-linecap=\"round\"";
    }

    private static void hazards(GreenDrawing drawing, Strokes strokes, double unit, Svg svg) {
        for (Hazard hazard : drawing.hole().hazards()) {
            boolean water = hazard.kind() == Hazard.Kind.WATER;
            String dashes =
                    water ? " stroke-dasharray=\"" + Svg.number(1.6 * unit) + " " + Svg.number(unit) + "\"" : "";
            svg.group("hazard", stroke(SOFT, 0.4 * unit) + dashes)
                    .path(strokes.of(hazard.area()))
                    .end();
        }
    }

    private static void ground(GreenDrawing drawing, Strokes strokes, double unit, Svg svg) {
        Predicate<MapPoint> inside = drawing.hole().green()::contains;
        svg.group("not-to-cut", stroke(SOFT, 0.3 * unit))
                .path(strokes.hatching(inside.and(drawing.notToCut())))
                .end();
        svg.group("resting", "fill=\"" + SOFT + "\"");
        strokes.dots(DOT_METRES, inside.and(drawing.resting()), (x, y) -> svg.circle(x, y, 0.45 * unit));
        svg.end();
    }

    private static void contours(GreenDrawing drawing, Strokes strokes, double unit, Svg svg) {
        drawing.surface().ifPresent(surface -> {
            Envelope box = drawing.hole().green().polygon().getEnvelopeInternal();
            ScalarGrid heights = ScalarGrid.heights(surface, box, CONTOUR_GRID_METRES);
            svg.group("contour", stroke(INK, 0.22 * unit));
            ContourLines.every(
                            ContourLines.HEIGHT_STEP_METRES,
                            heights,
                            drawing.hole().green())
                    .forEach(contour -> svg.path(strokes.of(contour.lines())));
            svg.end();
        });
    }

    private static void labels(String name, List<SpotOnMap> spots, MapFrame frame, double unit, Svg svg) {
        boolean ring = name.equals("old-hole");
        svg.group(name, "fill=\"" + INK + "\" font-size=\"" + Svg.number(3.4 * unit) + "\"");
        for (SpotOnMap spot : spots) {
            double x = frame.x(spot.at());
            double y = frame.y(spot.at());
            if (ring) {
                svg.group("ring", stroke(INK, 0.4 * unit))
                        .circle(x, y, 1.1 * unit)
                        .end();
            }
            svg.text(x + (ring ? 1.8 : -2.2) * unit, y + 1.2 * unit, spot.label());
        }
        svg.end();
    }

    private static void marks(List<Mark> marks, MapFrame frame, double unit, Svg svg) {
        svg.group("mark", stroke(SOFT, 0.4 * unit));
        for (Mark mark : marks) {
            double x = frame.x(mark.at());
            double y = frame.y(mark.at());
            svg.path("M" + Svg.number(x - unit) + " " + Svg.number(y) + "h" + Svg.number(2 * unit) + "M" + Svg.number(x)
                    + " " + Svg.number(y - unit) + "v" + Svg.number(2 * unit));
        }
        svg.end();
    }

    private static void spots(List<MapPoint> spots, MapFrame frame, double unit, Svg svg) {
        for (MapPoint spot : spots) {
            double x = frame.x(spot);
            double y = frame.y(spot);
            svg.group("spot-ring", stroke(ACCENT, 0.8 * unit))
                    .circle(x, y, 3.2 * unit)
                    .end();
            svg.group("spot", "fill=\"" + ACCENT + "\"")
                    .circle(x, y, 1.3 * unit)
                    .end();
        }
    }
}
