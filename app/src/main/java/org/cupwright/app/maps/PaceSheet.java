package org.cupwright.app.maps;

import java.util.List;
import org.cupwright.course.MapPoint;

/**
 * Blank ground in paces: a line each pace, a stronger one each five, numbers along two sides; play runs up. What is
 * drawn on it already is outlined: the edge of a green, and bunkers and water beside it. The groups carry classes:
 * {@code paces}, {@code fives}, {@code front}, and for what is drawn {@code edge} and {@code hazard}.
 *
 * <p>Places on it are paces as well: east is to the right of the line of play, north is on from the front.
 */
public record PaceSheet(String title) {
    /** Drawing units of a pace: our choice, so that a sheet is as wide as other pictures. */
    public static final double UNITS = 16;

    /** How far it reaches, paces: the longest green there is, and what lies about it. Our choices. */
    private static final int BEFORE = 14;

    private static final int BEYOND = 52;
    private static final int SIDEWAYS = 31;

    private static final int FIVE = 5;
    private static final int TEN = 10;
    private static final double LETTERS = MapStyle.PICTURE.em();

    /**
     * What is drawn already.
     *
     * @param edge whether it is the green's edge
     * @param corners in paces
     */
    public record Shape(boolean edge, List<MapPoint> corners) {
        public Shape {
            corners = List.copyOf(corners);
        }
    }

    private static int width() {
        return (int) (2 * SIDEWAYS * UNITS);
    }

    private static int height() {
        return (int) ((BEFORE + BEYOND) * UNITS);
    }

    /** Where a place right of the line of play is drawn. */
    public static double x(double rightPaces) {
        return (SIDEWAYS + rightPaces) * UNITS;
    }

    /** Where a place on from the front is drawn. */
    public static double y(double onPaces) {
        return (BEYOND - onPaces) * UNITS;
    }

    /** Nothing, to lie over the sheet: what is being drawn comes onto it. */
    public static String nothing() {
        return new Svg(width(), height(), "").done();
    }

    /** The sheet as an SVG document. */
    public String with(List<Shape> shapes) {
        Svg svg = new Svg(width(), height(), title);
        svg.group("paces", MapStyle.stroke("#d8d2c4", 0.7)).path(lines(1)).end();
        svg.group("fives", MapStyle.stroke(MapStyle.SOFT, 0.8))
                .path(lines(FIVE))
                .end();
        svg.group("front", MapStyle.stroke(MapStyle.INK, 1.6))
                .path("M", 0.0, y(0), "H", (double) width(), "M", x(0), 0.0, "V", (double) height())
                .end();
        numbers(svg);
        play(svg);
        shapes.forEach(shape -> shape(shape, svg));
        return svg.done();
    }

    private static String lines(int every) {
        StringBuilder lines = new StringBuilder();
        for (int on = -BEFORE; on <= BEYOND; on++) {
            lines.append(on % every == 0 ? Svg.data("M", 0.0, y(on), "H", (double) width()) : "");
        }
        for (int right = -SIDEWAYS; right <= SIDEWAYS; right++) {
            lines.append(right % every == 0 ? Svg.data("M", x(right), 0.0, "V", (double) height()) : "");
        }
        return lines.toString();
    }

    private static void numbers(Svg svg) {
        svg.group("numbers", MapStyle.fill(MapStyle.INK));
        for (int on = -TEN; on < BEYOND; on += TEN) {
            label(svg, LETTERS, y(on) + LETTERS / 3, Integer.toString(on));
        }
        for (int right = -SIDEWAYS / TEN * TEN; right <= SIDEWAYS; right += TEN) {
            if (right != 0) {
                label(svg, x(right), height() - LETTERS / 2, (right < 0 ? "L" : "R") + Math.abs(right));
            }
        }
        svg.end();
    }

    private static void label(Svg svg, double x, double y, String text) {
        double wide = OpenSans.REGULAR.width(text, LETTERS) + LETTERS / 2;
        svg.group("clear", MapStyle.fill(MapStyle.PAPER))
                .path("M", x - wide / 2, y + LETTERS / 4, "h", wide, "v", -1.2 * LETTERS, "h", -wide, "Z")
                .end();
        svg.text(OpenSans.REGULAR, LETTERS, true, x, y, text);
    }

    /** An arrow at the foot of the line of play. */
    private static void play(Svg svg) {
        double wing = 0.6 * LETTERS;
        double tip = height() - 3 * LETTERS;
        svg.group("play", MapStyle.stroke(MapStyle.INK, 2.4))
                .path("M", x(0), (double) height(), "V", tip, "l", -wing, 1.4 * wing)
                .path("M", x(0), tip, "l", wing, 1.4 * wing)
                .end();
    }

    private static void shape(Shape shape, Svg svg) {
        StringBuilder data = new StringBuilder();
        for (MapPoint at : shape.corners()) {
            data.append(data.isEmpty() ? "M" : "L").append(Svg.data(x(at.east()), y(at.north())));
        }
        String paint = shape.edge()
                ? MapStyle.stroke(MapStyle.INK, 3)
                : MapStyle.broken(MapStyle.INK, 2, "0.1 ", 0.25 * LETTERS);
        svg.group(shape.edge() ? "edge" : "hazard", paint)
                .path(data.append('Z').toString())
                .end();
    }
}
