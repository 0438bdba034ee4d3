package org.cupwright.app.maps;

import org.cupwright.app.texts.RoundLength;
import org.locationtech.jts.geom.Envelope;

/** The corners of a drawing: where north is, how play runs, how long a round length of the reader's units is. */
final class MapLegend {
    private static final String PAINT = MapStyle.stroke(MapStyle.INK, 1.8);

    private MapLegend() {}

    static void draw(boolean playRunsUp, RoundLength bar, Canvas canvas) {
        north(canvas);
        scale(bar, canvas);
        if (playRunsUp) {
            play(canvas);
        }
    }

    /** A needle about a point, so that it keeps its place however it turns. */
    private static void north(Canvas canvas) {
        double em = canvas.em();
        double reach = 1.5 * em;
        double x = canvas.frame().width() - reach - 0.4 * em;
        double y = reach + 0.4 * em;
        canvas.keep(x, y, reach);
        double tip = y - 0.35 * em;
        double wing = 0.35 * em;
        canvas.svg()
                .group("north", "transform=\"rotate(" + Svg.data(canvas.frame().northDegrees(), x, y) + ")\"")
                .group("needle", PAINT)
                .path("M", x, y + reach, "V", tip, "l", -wing, 1.6 * wing, "M", x, tip, "l", wing, 1.6 * wing)
                .end()
                .group("letter", MapStyle.fill(MapStyle.INK))
                .text(OpenSans.SEMIBOLD, em, true, x, tip - 0.3 * em, "N")
                .end()
                .end();
    }

    /** What the bar says stands over its middle, or as near to it as the drawing's edge lets it. */
    private static void scale(RoundLength bar, Canvas canvas) {
        double em = canvas.em();
        double y = canvas.foot() - 0.4 * em;
        double end = canvas.frame().width() - 0.5 * em;
        double start = end - canvas.frame().length(bar.metres());
        double inside = canvas.frame().width() - 0.2 * em - OpenSans.REGULAR.width(bar.says(), em) / 2;
        canvas.taken().add(new Envelope(start, end, y - 1.5 * em, y));
        canvas.svg()
                .group("scale", PAINT)
                .path("M", start, y - 0.4 * em, "v", 0.4 * em, "H", end, "v", -0.4 * em)
                .end()
                .group("scale-length", MapStyle.fill(MapStyle.INK))
                .text(OpenSans.REGULAR, em, true, Math.min((start + end) / 2, inside), y - 0.5 * em, bar.says())
                .end();
    }

    /** A short stroke at the foot of the drawing, from where play comes. */
    private static void play(Canvas canvas) {
        double em = canvas.em();
        double x = canvas.frame().width() / 2.0;
        double y = canvas.foot() - 0.3 * em;
        double side = 0.45 * em;
        canvas.keep(x, y - em, em);
        canvas.svg()
                .group("play", PAINT)
                .path("M", x, y, "v", -1.9 * em, "m", -side, 0.6 * em, "l", side, -0.6 * em, "l", side, 0.6 * em)
                .end();
    }
}
