package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws a green: contour lines every 5 cm, ground not to be cut hatched, resting ground dotted, free ground left clear;
 * ground that is closed or saved, with its word; ground that people drew as good or bad; the course's own areas,
 * today's in two lines; hazards, old holes, today's spot, slopes, what is doubtful, the line of play
 * upwards, north and a scale.
 *
 * <p>Ink on paper, one accent for today's spot; nothing is told by colour alone. The look is our own. The groups of the
 * SVG carry classes: {@code edge}, {@code contour}, {@code not-to-cut}, {@code resting}, {@code hazard},
 * {@code closed}, {@code saved}, {@code light-use}, {@code drawn-good}, {@code drawn-bad}, {@code usual},
 * {@code area}, {@code area-today},
 * {@code old-hole}, {@code spot}, {@code finding}, {@code line}, {@code hazard-number}.
 */
public record GreenMap(Texts texts) {
    /** Width of a picture, drawing units: our choice. */
    public static final int PICTURE_WIDTH = 1000;

    private static final double LEAST_HEIGHT = 0.5;
    private static final double GREATEST_HEIGHT = 2;

    /**
     * A small drawing for paper, as an SVG document so many tenths of a millimetre wide and high; without slopes and
     * title.
     */
    public String card(GreenDrawing drawing, int width, int height) {
        return drawn(drawing, new MapFrame(drawing.hole(), width, height), MapStyle.CARD, height)
                .done();
    }

    /**
     * The whole drawing with its key, as an SVG document {@link #PICTURE_WIDTH} wide and as high as the green asks for.
     */
    public String picture(GreenDrawing drawing) {
        MapFrame frame = frame(drawing);
        Svg svg = drawn(drawing, frame, MapStyle.PICTURE, groundHeight(drawing.hole(), drawing.marginMetres()));
        new MapKey(drawing, MapStyle.PICTURE, texts).draw(frame.width(), frame.height(), svg);
        return svg.done();
    }

    /**
     * Where the ground lies on the whole drawing. What is drawn of a green changes nothing but the height of the strip
     * below it: a place of the ground is at the same place of every drawing of it.
     */
    public MapFrame frame(GreenDrawing drawing) {
        int strip = new MapKey(drawing, MapStyle.PICTURE, texts).height(PICTURE_WIDTH);
        double margin = drawing.marginMetres();
        int height = groundHeight(drawing.hole(), margin) + strip;
        return new MapFrame(drawing.hole(), PICTURE_WIDTH, height, strip, margin);
    }

    /** What the strip below the drawing says of its signs, for whoever shows it too small to read it there. */
    public List<String> key(GreenDrawing drawing) {
        return new MapKey(drawing, MapStyle.PICTURE, texts).signs();
    }

    /** Where the ground lies on the whole drawing of a green, without the strip below it. */
    public static MapFrame groundFrame(Hole hole) {
        return new MapFrame(hole, PICTURE_WIDTH, groundHeight(hole, MapFrame.MARGIN_METRES));
    }

    private static int groundHeight(Hole hole, double marginMetres) {
        double high = MapFrame.heightForWidth(hole, marginMetres);
        double shape = Math.max(LEAST_HEIGHT, Math.min(GREATEST_HEIGHT, high));
        return (int) Math.round(PICTURE_WIDTH * shape);
    }

    private Svg drawn(GreenDrawing drawing, MapFrame frame, MapStyle style, double foot) {
        String plain = texts.say("map.title", drawing.hole().id());
        Svg svg = new Svg(frame.width(), frame.height(), drawing.title().isEmpty() ? plain : drawing.title());
        Canvas canvas = new Canvas(frame, style, foot, svg, new ArrayList<>());
        SpotLayer spots = new SpotLayer(drawing, canvas, texts);
        DrawnLayer drawn = new DrawnLayer(drawing, canvas);
        AreaLayer areas = new AreaLayer(drawing, canvas);
        hazards(drawing, canvas);
        AboutLayer about = new AboutLayer(drawing, canvas);
        about.line();
        ground(drawing, canvas);
        drawn.areas();
        areas.lines();
        MarkedLayer.draw(drawing, canvas, texts);
        canvas.outline(
                "edge",
                MapStyle.stroke(MapStyle.INK, 3.4),
                drawing.hole().green().polygon());
        boolean ownLine = drawing.about(); // which tells the way of play at more length
        MapLegend.draw(drawing.hole().lineOfPlay().isPresent() && !ownLine, texts.roundLength(), canvas);
        FindingLayer findings = new FindingLayer(drawing.findings(), canvas);
        areas.numbers();
        ContourLayer.draw(drawing, canvas);
        drawn.spots();
        spots.draw();
        findings.draw();
        about.numbers();
        return svg;
    }

    private static void hazards(GreenDrawing drawing, Canvas canvas) {
        for (Hazard hazard : drawing.hole().hazards()) {
            canvas.outline("hazard", edge(hazard.kind(), canvas.em()), hazard.area());
        }
    }

    /** A bunker's edge is dotted, water's dashed, a fall-off's drawn through. */
    private static String edge(Hazard.Kind kind, double em) {
        return switch (kind) {
            case BUNKER -> MapStyle.broken(MapStyle.SOFT, 2, "0.1 ", 0.25 * em);
            case WATER -> MapStyle.broken(MapStyle.SOFT, 2, 0.8 * em, 0.5 * em);
            case FALL_OFF -> MapStyle.stroke(MapStyle.SOFT, 2);
        };
    }

    private static void ground(GreenDrawing drawing, Canvas canvas) {
        Strokes strokes = canvas.strokes();
        Predicate<MapPoint> inside = drawing.hole().green()::contains;
        DrawnGround ground = drawing.ground();
        double em = canvas.em();
        Svg svg = canvas.svg();
        svg.group("not-to-cut", MapStyle.stroke(MapStyle.SOFT, 0.8))
                .path(strokes.hatching(0.62 * em, false, inside.and(ground.notToCut())))
                .end();
        svg.group("resting", MapStyle.fill(MapStyle.SOFT));
        for (Coordinate at : strokes.pattern(0.75 * em, inside.and(ground.resting()))) {
            svg.circle(at.x, at.y, 0.11 * em);
        }
        svg.end().group("not-surveyed", MapStyle.fill(MapStyle.INK));
        for (Coordinate at : strokes.pattern(2 * em, inside.and(ground.notSurveyed()))) {
            svg.text(OpenSans.REGULAR, em, true, at.x, at.y, "?");
        }
        svg.end();
    }
}
