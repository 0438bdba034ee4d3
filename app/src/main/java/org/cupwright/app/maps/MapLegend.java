package org.cupwright.app.maps;

import org.locationtech.jts.geom.Envelope;

/** The corners of a drawing: where north is, how play runs, how long five metres are. */
final class MapLegend {
    private static final double BAR_METRES = 5;

    private final MapFrame frame;
    private final MapStyle style;
    /** Where the drawing of the ground ends and writing begins. */
    private final double foot;

    MapLegend(MapFrame frame, MapStyle style, double foot) {
        this.frame = frame;
        this.style = style;
        this.foot = foot;
    }

    void draw(boolean playRunsUp, LabelRoom room, Svg svg) {
        north(room, svg);
        scale(room, svg);
        if (playRunsUp) {
            play(room, svg);
        }
    }

    /** A needle about a point, so that it keeps its place however it turns. */
    private void north(LabelRoom room, Svg svg) {
        double reach = 1.5 * style.em();
        double x = frame.width() - reach - 0.4 * style.em();
        double y = reach + 0.4 * style.em();
        room.keep(x, y, reach);
        svg.group(
                "north",
                "transform=\"rotate(" + Svg.number(frame.northDegrees()) + " " + Svg.number(x) + " " + Svg.number(y)
                        + ")\"");
        svg.group("needle", style.stroke(MapStyle.INK, 1.8));
        double tip = y - 0.35 * style.em();
        double wing = 0.35 * style.em();
        svg.path("M" + Svg.number(x) + " " + Svg.number(y + reach) + "V" + Svg.number(tip) + "l" + Svg.number(-wing)
                + " " + Svg.number(1.6 * wing) + "M" + Svg.number(x) + " " + Svg.number(tip) + "l" + Svg.number(wing)
                + " " + Svg.number(1.6 * wing));
        svg.end();
        svg.group("letter", MapStyle.fill(MapStyle.INK));
        svg.text(centred().semibold(), x, tip - 0.3 * style.em(), "N").end();
        svg.end();
    }

    private Lettering centred() {
        return style.letters().anchored(Lettering.Anchor.MIDDLE);
    }

    private void scale(LabelRoom room, Svg svg) {
        double em = style.em();
        double y = foot - 0.4 * em;
        double end = frame.width() - 0.5 * em;
        double start = end - frame.length(BAR_METRES);
        room.keep(new Envelope(start, end, y - 1.5 * em, y));
        svg.group("scale", style.stroke(MapStyle.INK, 1.8));
        svg.path("M" + Svg.number(start) + " " + Svg.number(y - 0.4 * em) + "v" + Svg.number(0.4 * em) + "H"
                + Svg.number(end) + "v" + Svg.number(-0.4 * em));
        svg.end();
        svg.group("scale-length", MapStyle.fill(MapStyle.INK));
        svg.text(centred(), (start + end) / 2, y - 0.5 * em, "5 m").end();
    }

    /** A short stroke at the foot of the drawing, from where play comes. */
    private void play(LabelRoom room, Svg svg) {
        double em = style.em();
        double x = frame.width() / 2.0;
        double y = foot - 0.3 * em;
        room.keep(x, y - em, em);
        svg.group("play", style.stroke(MapStyle.INK, 1.8));
        svg.path("M" + Svg.number(x) + " " + Svg.number(y) + "v" + Svg.number(-1.9 * em) + "m" + Svg.number(-0.45 * em)
                + " " + Svg.number(0.6 * em) + "l" + Svg.number(0.45 * em) + " " + Svg.number(-0.6 * em) + "l"
                + Svg.number(0.45 * em) + " " + Svg.number(0.6 * em));
        svg.end();
    }
}
