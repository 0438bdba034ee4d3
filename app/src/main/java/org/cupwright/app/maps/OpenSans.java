package org.cupwright.app.maps;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The one family of letters on paper and in pictures, carried inside the program, so that both look the same on every
 * machine.
 *
 * <p>Widths and outlines come from the font file itself, never from the machine's fonts.
 */
public enum OpenSans {
    REGULAR(400),
    SEMIBOLD(600),
    BOLD(700);

    public static final String FAMILY = "Open Sans";

    /** Read once each; a font is not safe for several threads at once, so it is used under this map's lock. */
    private static final Map<OpenSans, TrueTypeFont> READ = new EnumMap<>(OpenSans.class);

    private final int weight;

    OpenSans(int weight) {
        this.weight = weight;
    }

    /** The weight as style sheets number it. */
    public int weight() {
        return weight;
    }

    /** The font file. */
    public InputStream stream() {
        String name = "OpenSans-" + name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
        InputStream file = OpenSans.class.getResourceAsStream("fonts/" + name + ".ttf");
        if (file == null) {
            throw new IllegalStateException("the font " + name + " is missing from the program");
        }
        return file;
    }

    /** How wide a text is in letters of a size, in the size's unit. */
    public double width(String text, double size) {
        return read(font -> {
            double units = 0;
            for (int glyph : glyphs(font, text)) {
                units += font.getAdvanceWidth(glyph);
            }
            return units * size / font.getUnitsPerEm();
        });
    }

    /** The outline of a text that begins at a point of a drawing whose y runs down. */
    Path2D outline(String text, double x, double y, double size) {
        return read(font -> {
            double scale = size / font.getUnitsPerEm();
            Path2D whole = new Path2D.Double();
            double along = x;
            for (int glyph : glyphs(font, text)) {
                GlyphData shape = font.getGlyph().getGlyph(glyph);
                if (shape != null) {
                    AffineTransform placed = new AffineTransform(scale, 0, 0, -scale, along, y);
                    whole.append(shape.getPath().getPathIterator(placed), false);
                }
                along += font.getAdvanceWidth(glyph) * scale;
            }
            return whole;
        });
    }

    private static int[] glyphs(TrueTypeFont font, String text) throws IOException {
        CmapLookup letters = font.getUnicodeCmapLookup();
        return text.codePoints().map(letters::getGlyphId).toArray();
    }

    /** What is read out of the font file. */
    private interface Reading<T> {
        T of(TrueTypeFont font) throws IOException;
    }

    private <T> T read(Reading<T> reading) {
        synchronized (READ) {
            try {
                TrueTypeFont font = READ.get(this);
                if (font == null) {
                    font = parsed();
                    READ.put(this, font);
                }
                return reading.of(font);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    private TrueTypeFont parsed() throws IOException {
        try (InputStream file = stream()) {
            return new TTFParser().parse(new RandomAccessReadBuffer(file));
        }
    }
}
