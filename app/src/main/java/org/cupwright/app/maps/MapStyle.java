package org.cupwright.app.maps;

/**
 * How fine a drawing is: what can be read on a screen cannot be read on a card in the pocket.
 *
 * @param em size of the letters, in drawing units
 * @param full whether slopes, ages and heights are written
 */
record MapStyle(double em, boolean full) {
    static final String INK = "#25221d";
    static final String SOFT = "#7a7263";
    static final String PAPER = "#ffffff";
    /** The one accent, for today's spot; dark enough to stand out in grey too. */
    static final String ACCENT = "#a4431d";

    /** A picture of a thousand units' width: our choice, letters as large as on a page of text. */
    static final MapStyle PICTURE = new MapStyle(17, true);

    /** A drawing of tenths of a millimetre: letters of 6 points, the smallest that are read outdoors (our choice). */
    static final MapStyle CARD = new MapStyle(21, false);

    /** Width of a thin line, drawing units: our choice. */
    private static final double LINE = 1.1;

    static String stroke(String colour, double lines) {
        return "fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + Svg.data(lines * LINE)
                + "\" stroke-linejoin=\"round\" stroke-linecap=\"round\"";
    }

    /** The same, broken: how long strokes and gaps are. */
    static String broken(String colour, double lines, Object... lengths) {
        return stroke(colour, lines) + " stroke-dasharray=\"" + Svg.data(lengths) + "\"";
    }

    static String fill(String colour) {
        return "fill=\"" + colour + "\"";
    }
}
