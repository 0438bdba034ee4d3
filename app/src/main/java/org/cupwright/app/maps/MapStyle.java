package org.cupwright.app.maps;

/**
 * How fine a drawing is: what can be read on a screen cannot be read on a card in the pocket.
 *
 * @param em size of the letters, in drawing units
 * @param line width of a thin line
 * @param full whether slopes, ages and heights are written
 */
record MapStyle(double em, double line, boolean full) {
    static final String INK = "#25221d";
    static final String SOFT = "#7a7263";
    static final String PAPER = "#ffffff";
    /** The one accent, for today's spot; dark enough to stand out in grey too. */
    static final String ACCENT = "#a4431d";

    /** A picture of a thousand units' width: our choice, letters as large as on a page of text. */
    static MapStyle picture() {
        return new MapStyle(17, 1.1, true);
    }

    /** A drawing of tenths of a millimetre: letters of 6 points, the smallest that are read outdoors (our choice). */
    static MapStyle card() {
        return new MapStyle(21, 1.1, false);
    }

    String stroke(String colour, double lines) {
        return "fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + Svg.number(lines * line)
                + "\" stroke-linejoin=\"round\" stroke-linecap=\"round\"";
    }

    static String fill(String colour) {
        return "fill=\"" + colour + "\"";
    }

    Lettering letters() {
        return Lettering.small(em);
    }
}
