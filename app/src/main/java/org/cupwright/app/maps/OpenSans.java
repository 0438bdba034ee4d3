package org.cupwright.app.maps;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The one family of letters on paper and in pictures, carried inside the program, so that both look the same on every machine.
 *
 * <p>Widths and outlines come from the font file itself, never from the machine's fonts.
 */
public enum OpenSans {
    REGULAR(400),
    SEMIBOLD(600),
    BOLD(700);

    private final int weight;
    private TrueTypeFont font;

    OpenSans(int weight) {
        this.weight = weight;
    }

    public static final String FAMILY = "Open Sans";

    /** The weight as style sheets number it. */
    public int weight() {
        return weight;
    }

    /** The font file. */
    public InputStream stream() {
        String name = "OpenSans-" + name().charAt(0) + name().substring(1).toLowerCase(java.util.Locale.ROOT);
        InputStream file = OpenSans.class.getResourceAsStream("fonts/" + name + ".ttf");
        if (file == null) {
            throw new IllegalStateException("the font " + name + " is missing from the program");
        }
        return file;
    }

    /** How wide a text is in letters of a size, in the size's unit. */
    synchronized double width(String text, double size) {
        try {
            double units = 0;
            for (int glyph : glyphs(text)) {
                units += font().getAdvanceWidth(glyph);
            }
            return units * size / font().getUnitsPerEm();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The outline of a text that begins at a point of a drawing whose y runs down. */
    synchronized Path2D outline(String text, double x, double y, double size) {
        try {
            double scale = size / font().getUnitsPerEm();
            Path2D whole = new Path2D.Double();
            double along = x;
            for (int glyph : glyphs(text)) {
                GlyphData shape = font().getGlyph().getGlyph(glyph);
                if (shape != null) {
                    whole.append(
                            shape.getPath().getPathIterator(new AffineTransform(scale, 0, 0, -scale, along, y)), false);
                }
                along += font().getAdvanceWidth(glyph) * scale;
            }
            return whole;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private int[] glyphs(String text) throws IOException {
        CmapLookup letters = font().getUnicodeCmapLookup();
        return text.codePoints().map(letters::getGlyphId).toArray();
    }

    private TrueTypeFont font() throws IOException {
        if (font == null) {
            try (InputStream file = stream()) {
                font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            }
        }
        return font;
    }
}
