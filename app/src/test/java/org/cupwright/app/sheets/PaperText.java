package org.cupwright.app.sheets;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The text of a PDF, and where each letter of it stands. */
public final class PaperText extends PDFTextStripper {
    private static final double MILLIMETRES_A_POINT = 25.4 / 72;

    private final List<Letter> letters = new ArrayList<>();

    /**
     * One letter.
     *
     * @param page counted from 1
     * @param box in millimetres from the page's upper left corner
     */
    record Letter(int page, String text, Rectangle2D box) {}

    static List<Letter> letters(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PaperText text = new PaperText();
            text.getText(document);
            return text.letters;
        }
    }

    /** The words in reading order, blanks made even. */
    public static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    /** Line by line. */
    static List<String> lines(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document)
                    .lines()
                    .map(line -> line.strip().replaceAll("\\s+", " "))
                    .toList();
        }
    }

    @Override
    protected void processTextPosition(TextPosition position) {
        double height = position.getHeightDir();
        Rectangle2D box = new Rectangle2D.Double(
                position.getXDirAdj() * MILLIMETRES_A_POINT,
                (position.getYDirAdj() - height) * MILLIMETRES_A_POINT,
                position.getWidthDirAdj() * MILLIMETRES_A_POINT,
                height * MILLIMETRES_A_POINT);
        if (!position.getUnicode().isBlank()) {
            letters.add(new Letter(getCurrentPageNo(), position.getUnicode(), box));
        }
        super.processTextPosition(position);
    }
}
