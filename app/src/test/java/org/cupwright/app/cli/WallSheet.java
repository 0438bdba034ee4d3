package org.cupwright.app.cli;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A page of holes by days as a person reads it: which words stand under which day and beside which hole, by the places
 * of the letters alone. It shares no code with what drew them.
 */
final class WallSheet {
    private static final double MILLIMETRES_A_POINT = 25.4 / 72;
    private static final String DATE = "\\d{1,2}(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)";

    /** The label of the last row. */
    private static final String LAST = "*!";

    private static final int SUMS = 3;

    /** One letter: its box in millimetres from the upper left, and how large it is. */
    record Letter(String text, Rectangle2D box, double points) {
        double x() {
            return box.getCenterX();
        }

        double base() {
            return box.getMaxY();
        }
    }

    /** Letters that stand close beside each other on one line, without their blanks. */
    record Word(String text, double x, double base) {}

    private final List<Letter> letters;
    private final double width;
    private final double height;
    private final List<Word> dates = new ArrayList<>();
    private final List<Word> labels = new ArrayList<>();

    private WallSheet(List<Letter> letters, double width, double height) {
        this.letters = letters;
        this.width = width;
        this.height = height;
        for (List<Letter> line : lines(letters)) {
            List<Word> words = words(line);
            if (dates.isEmpty() && words.stream().allMatch(word -> word.text().matches(DATE))) {
                dates.addAll(words);
            }
        }
        double left = dates.get(0).x() - between() / 2;
        double head = dates.get(0).base();
        lines(letters.stream()
                        .filter(letter -> letter.x() < left && letter.base() > head)
                        .toList())
                .forEach(line -> labels.addAll(words(line)));
        int last = labels().indexOf(LAST);
        labels.subList(last + 1, labels.size()).clear(); // the notes below the table
    }

    static List<WallSheet> pages(Path pdf) throws IOException {
        List<WallSheet> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<Letter> letters = new ArrayList<>();
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition at) {
                        if (!at.getUnicode().isBlank()) {
                            letters.add(letter(at));
                        }
                    }
                };
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                stripper.getText(document);
                var size = document.getPage(page - 1).getMediaBox();
                pages.add(new WallSheet(
                        letters, size.getWidth() * MILLIMETRES_A_POINT, size.getHeight() * MILLIMETRES_A_POINT));
            }
        }
        return pages;
    }

    private static Letter letter(TextPosition at) {
        double high = at.getHeightDir();
        Rectangle2D box = new Rectangle2D.Double(
                at.getXDirAdj() * MILLIMETRES_A_POINT,
                (at.getYDirAdj() - high) * MILLIMETRES_A_POINT,
                at.getWidthDirAdj() * MILLIMETRES_A_POINT,
                high * MILLIMETRES_A_POINT);
        return new Letter(at.getUnicode(), box, at.getYScale());
    }

    private static List<List<Letter>> lines(List<Letter> letters) {
        TreeMap<Long, List<Letter>> lines = new TreeMap<>();
        for (Letter letter : letters) {
            long tenths = Math.round(10 * letter.base());
            Long near = lines.floorKey(tenths + 2);
            long key = near != null && near >= tenths - 2 ? near : tenths;
            lines.computeIfAbsent(key, line -> new ArrayList<>()).add(letter);
        }
        lines.values().forEach(line -> line.sort(Comparator.comparing(Letter::x)));
        return List.copyOf(lines.values());
    }

    private static List<Word> words(List<Letter> line) {
        List<Word> words = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= line.size(); i++) {
            boolean ends = i == line.size()
                    || line.get(i).box().getMinX() - line.get(i - 1).box().getMaxX()
                            > 0.45 * MILLIMETRES_A_POINT * line.get(i).points();
            if (ends) {
                List<Letter> word = line.subList(from, i);
                double middle = (word.get(0).box().getMinX()
                                + word.get(word.size() - 1).box().getMaxX())
                        / 2;
                words.add(new Word(text(word), middle, word.get(0).base()));
                from = i;
            }
        }
        return words;
    }

    private static String text(List<Letter> letters) {
        StringBuilder text = new StringBuilder();
        letters.forEach(letter -> text.append(letter.text()));
        return text.toString();
    }

    private double between() {
        return dates.size() > 1 ? dates.get(1).x() - dates.get(0).x() : 30;
    }

    double widthMillimetres() {
        return width;
    }

    double heightMillimetres() {
        return height;
    }

    List<Letter> letters() {
        return letters;
    }

    /** The dates of its columns, without blanks: {@code 20Jun}. */
    List<String> dates() {
        return dates.stream().map(Word::text).toList();
    }

    /** What stands at the left of its rows: holes, and at last what is summed up. */
    List<String> labels() {
        return labels.stream().map(Word::text).toList();
    }

    /** What stands in the head of a column, line by line. */
    List<String> head(String date) {
        double under = dates.get(0).base();
        return column(
                date,
                letters.stream()
                        .filter(letter -> Math.abs(letter.base() - under)
                                < 0.62 * (labels.get(0).base() - under))
                        .toList());
    }

    /** What stands in each row of a column, line by line, by the row's label. */
    Map<String, List<String>> cells(String date) {
        Map<String, List<String>> cells = new LinkedHashMap<>();
        for (int i = 0; i < labels.size(); i++) {
            double above = i == 0
                    ? labels.get(0).base()
                            - (labels.get(1).base() - labels.get(0).base()) / 2
                    : border(i - 1);
            double below = i == labels.size() - 1 ? labels.get(i).base() + 1 : border(i);
            cells.put(
                    labels.get(i).text(),
                    column(
                            date,
                            letters.stream()
                                    .filter(letter -> letter.box().getCenterY() > above - 1 && letter.base() < below)
                                    .filter(letter -> letter.base() > above)
                                    .toList()));
        }
        return cells;
    }

    /** Between a row and the next: half way; the rows of sums are low, so above the first of them nearer to it. */
    private double border(int row) {
        double next = labels.get(row + 1).base();
        return row == labels.size() - SUMS - 1
                ? next - 0.72 * (labels.get(row + 2).base() - next)
                : (labels.get(row).base() + next) / 2;
    }

    private List<String> column(String date, List<Letter> some) {
        double middle = dates.get(dates().indexOf(date)).x();
        return lines(some.stream()
                        .filter(letter -> Math.abs(letter.x() - middle) < between() / 2)
                        .toList())
                .stream()
                .map(WallSheet::text)
                .toList();
    }
}
