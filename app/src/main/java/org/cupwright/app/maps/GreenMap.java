package org.cupwright.app.maps;

import java.util.List;
import java.util.function.Predicate;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;

/**
 * Draws a green: contour lines every 5 cm, ground not to be cut hatched, resting ground dotted, free ground left clear; ground that
 * people drew as good or bad; hazards, old holes, today's spot, slopes, what is doubtful, the line of play upwards, north and a scale.
 *
 * <p>Ink on paper, one accent for today's spot; nothing is told by colour alone. The look is our own. The groups of the SVG carry
 * classes: {@code edge}, {@code contour}, {@code not-to-cut}, {@code resting}, {@code hazard}, {@code drawn-good}, {@code drawn-bad}, {@code usual}, {@code old-hole}, {@code spot}, {@code finding}.
 */
public final class GreenMap {
    /** Width of a picture, drawing units: our choice. */
    public static final int PICTURE_WIDTH = 1000;

    private static final double LEAST_HEIGHT = 0.5;
    private static final double GREATEST_HEIGHT = 2;

    private final Texts texts;

    public GreenMap(Texts texts) {
        this.texts = texts;
    }

    /** A small drawing for paper, as an SVG document so many tenths of a millimetre wide and high; without slopes and title. */
    public String card(GreenDrawing drawing, int width, int height) {
        MapFrame frame = new MapFrame(drawing.hole(), width, height);
        Svg svg = svg(drawing, frame);
        draw(drawing, frame, MapStyle.card(), height, svg);
        return svg.done();
    }

    /** The whole drawing with its key, as an SVG document {@link #PICTURE_WIDTH} wide and as high as the green asks for. */
    public String picture(GreenDrawing drawing) {
        MapStyle style = MapStyle.picture();
        MapKey key = new MapKey(drawing, style, texts);
        double shape = Math.max(LEAST_HEIGHT, Math.min(GREATEST_HEIGHT, MapFrame.heightForWidth(drawing.hole())));
        int ground = (int) Math.round(PICTURE_WIDTH * shape);
        int strip = key.height(PICTURE_WIDTH);
        MapFrame frame = new MapFrame(drawing.hole(), PICTURE_WIDTH, ground + strip, strip);
        Svg svg = svg(drawing, frame);
        draw(drawing, frame, style, ground, svg);
        key.draw(frame.width(), frame.height(), svg);
        return svg.done();
    }

    private Svg svg(GreenDrawing drawing, MapFrame frame) {
        String plain = texts.say("map.title", drawing.hole().id());
        return new Svg(frame.width(), frame.height(), drawing.title().isEmpty() ? plain : drawing.title());
    }

    private void draw(GreenDrawing drawing, MapFrame frame, MapStyle style, double foot, Svg svg) {
        Strokes strokes = new Strokes(frame);
        LabelRoom room = new LabelRoom(frame.width(), foot);
        SpotLayer spots = new SpotLayer(drawing, frame, style, texts);
        FindingLayer findings = new FindingLayer(drawing, frame, style);
        spots.keep(room);
        DrawnLayer drawn = new DrawnLayer(drawing, frame, style);
        drawn.keep(room);
        findings.keep(room);
        hazards(drawing, strokes, style, svg);
        ground(drawing, strokes, style, svg);
        drawn.areas(strokes, svg);
        svg.group("edge", style.stroke(MapStyle.INK, 3.4))
                .path(strokes.of(drawing.hole().green().polygon()))
                .end();
        new MapLegend(frame, style, foot).draw(drawing.hole().lineOfPlay().isPresent(), room, svg);
        List<FindingLayer.Marked> marked = findings.take(room);
        new ContourLayer(drawing, frame, style).draw(room, svg);
        drawn.spots(svg);
        spots.draw(room, svg);
        findings.draw(marked, svg);
    }

    private void hazards(GreenDrawing drawing, Strokes strokes, MapStyle style, Svg svg) {
        for (Hazard hazard : drawing.hole().hazards()) {
            svg.group("hazard", style.stroke(MapStyle.SOFT, 2) + dashes(hazard.kind(), style))
                    .path(strokes.of(hazard.area()))
                    .end();
        }
    }

    /** A bunker's edge is dotted, water's dashed, a fall-off's drawn through. */
    private static String dashes(Hazard.Kind kind, MapStyle style) {
        double em = style.em();
        return switch (kind) {
            case BUNKER -> " stroke-dasharray=\"0.1 " + Svg.number(0.25 * em) + "\"";
            case WATER -> " stroke-dasharray=\"" + Svg.number(0.8 * em) + " " + Svg.number(0.5 * em) + "\"";
            case FALL_OFF -> "";
        };
    }

    private static void ground(GreenDrawing drawing, Strokes strokes, MapStyle style, Svg svg) {
        Predicate<MapPoint> inside = drawing.hole().green()::contains;
        DrawnGround ground = drawing.ground();
        double em = style.em();
        svg.group("not-to-cut", style.stroke(MapStyle.SOFT, 0.8))
                .path(strokes.hatching(0.62 * em, inside.and(ground.notToCut())))
                .end();
        svg.group("resting", MapStyle.fill(MapStyle.SOFT));
        strokes.pattern(0.75 * em, inside.and(ground.resting()), (x, y) -> svg.circle(x, y, 0.11 * em));
        svg.end();
        svg.group("not-surveyed", MapStyle.fill(MapStyle.INK));
        Lettering mark = style.letters().anchored(Lettering.Anchor.MIDDLE);
        strokes.pattern(2 * em, inside.and(ground.notSurveyed()), (x, y) -> svg.text(mark, x, y, "?"));
        svg.end();
    }
}
