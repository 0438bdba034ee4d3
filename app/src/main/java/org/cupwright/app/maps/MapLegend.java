package org.cupwright.app.maps;

/** The corners of a drawing: where north is, how play runs, how long five metres are. */
final class MapLegend {
    private static final String INK = "#25221d";
    private static final double BAR_METRES = 5;

    private final MapFrame frame;
    private final double unit;

    MapLegend(MapFrame frame, double unit) {
        this.frame = frame;
        this.unit = unit;
    }

    void draw(boolean playRunsUp, Svg svg) {
        north(svg);
        scale(svg);
        if (playRunsUp) {
            play(svg);
        }
    }

    private String ink(double width) {
        return "fill=\"none\" stroke=\"" + INK + "\" stroke-width=\"" + Svg.number(width * unit) + "\"";
    }

    private void north(Svg svg) {
        double x = frame.width() - 6 * unit;
        double y = 7 * unit;
        svg.group(
                "north",
                "transform=\"rotate(" + Svg.number(frame.northDegrees()) + " " + Svg.number(x) + " " + Svg.number(y)
                        + ")\"");
        svg.group("needle", ink(0.5));
        svg.path("M" + Svg.number(x) + " " + Svg.number(y + 3.5 * unit) + "v" + Svg.number(-6 * unit));
        svg.end();
        svg.group("letter", "fill=\"" + INK + "\" font-size=\"" + Svg.number(3 * unit) + "\" text-anchor=\"middle\"");
        svg.text(x, y - 3.2 * unit, "N").end();
        svg.end();
    }

    private void scale(Svg svg) {
        double y = frame.height() - 2 * unit;
        double end = frame.width() - 2 * unit;
        double start = end - frame.length(BAR_METRES);
        svg.group("scale", ink(0.5));
        svg.path("M" + Svg.number(start) + " " + Svg.number(y - unit) + "v" + Svg.number(unit) + "H" + Svg.number(end)
                + "v" + Svg.number(-unit));
        svg.end();
        svg.group(
                "scale-length",
                "fill=\"" + INK + "\" font-size=\"" + Svg.number(3 * unit) + "\" text-anchor=\"middle\"");
        svg.text((start + end) / 2, y - 1.4 * unit, "5 m").end();
    }

    /** A short stroke at the foot of the drawing, from where play comes. */
    private void play(Svg svg) {
        double x = frame.width() / 2.0;
        double foot = frame.height() - unit;
        svg.group("play", ink(0.5));
        svg.path("M" + Svg.number(x) + " " + Svg.number(foot) + "v" + Svg.number(-5 * unit) + "m"
                + Svg.number(-1.2 * unit) + " " + Svg.number(1.6 * unit) + "l" + Svg.number(1.2 * unit) + " "
                + Svg.number(-1.6 * unit) + "l" + Svg.number(1.2 * unit) + " " + Svg.number(1.6 * unit));
        svg.end();
    }
}
