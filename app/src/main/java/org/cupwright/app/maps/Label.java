package org.cupwright.app.maps;

import org.locationtech.jts.geom.Envelope;

/**
 * A short text on a drawing, with clear ground under it so that lines do not run through it.
 *
 * @param text what is written
 * @param lettering how
 */
record Label(String text, Lettering lettering) {
    /** Height of a figure as a part of the letters' size: of this font, measured. */
    private static final double FIGURE = 0.72;

    private static final double EDGE = 0.14;

    private double width() {
        return lettering.width(text) + 2 * EDGE * lettering.size();
    }

    private double height() {
        return (FIGURE + 2 * EDGE) * lettering.size();
    }

    /** The box of the label written about a point. */
    Envelope about(double x, double y) {
        return new Envelope(x - width() / 2, x + width() / 2, y - height() / 2, y + height() / 2);
    }

    /** The box of the label written beside a point, so far from it: to the right, left, above or below. */
    Envelope beside(double x, double y, double gap, int right, int down) {
        return about(x + right * (gap + width() / 2), y + down * (gap + height() / 2));
    }

    void draw(Envelope box, Svg svg) {
        svg.group("clear", MapStyle.fill(MapStyle.PAPER))
                .box(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight())
                .end();
        double foot = box.getMaxY() - EDGE * lettering.size();
        svg.text(lettering, box.getMinX() + EDGE * lettering.size(), foot, text);
    }
}
