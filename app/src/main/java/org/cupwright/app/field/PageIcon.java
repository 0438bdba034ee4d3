package org.cupwright.app.field;

import java.nio.charset.StandardCharsets;
import org.cupwright.app.maps.Png;

/** The mark as a telephone wants it beside its other programs: drawn when asked for, from the one drawing there is. */
enum PageIcon {
    SMALL(192, "any", 0),
    LARGE(512, "any", 0),

    /** Cut to a shape by the telephone, which leaves a circle of four fifths: the mark keeps within it. */
    MASKABLE(512, "maskable", 3);

    /** The sides of the drawing; in it the mark reaches almost to its edge. */
    private static final int SIDE = 16;

    private static final String PAPER = "#fdfaf3";

    private final int pixels;
    private final String purpose;
    private final int about;

    PageIcon(int pixels, String purpose, int about) {
        this.pixels = pixels;
        this.purpose = purpose;
        this.about = about;
    }

    int pixels() {
        return pixels;
    }

    /** As a manifest says it. */
    String purpose() {
        return purpose;
    }

    byte[] png() {
        int wide = SIDE + 2 * about;
        String size = "width=\"" + wide + "\" height=\"" + wide + "\"";
        String paper = "<rect x=\"" + -about + "\" y=\"" + -about + "\" " + size + " fill=\"" + PAPER + "\"/>";
        String seen = size + " viewBox=\"" + -about + " " + -about + " " + wide + " " + wide + "\">";
        String mark = new String(PageFiles.mark(), StandardCharsets.UTF_8);
        return Png.of(mark.replaceFirst("viewBox=\"[^\"]*\">", seen + paper), pixels);
    }
}
