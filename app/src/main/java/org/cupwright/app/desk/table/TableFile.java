package org.cupwright.app.desk.table;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;

/**
 * A table as people and programs write it: the first line names the columns, every other is an entry. Lines that cannot be what they
 * seem are refused here: those with more fields than the first (decimal commas between commas), and a last one that was cut off.
 */
public final class TableFile {
    private final CsvText text;
    private final Line header;
    private final List<Line> lines;

    private TableFile(CsvText text, List<Line> lines) {
        this.text = text;
        this.header = lines.get(0);
        this.lines = lines.subList(1, lines.size());
    }

    /**
     * A line.
     *
     * @param number the number in the file of the line with which it begins, the first being 1
     * @param text what that line says
     * @param fields its fields as they stand there, blanks about them included
     */
    public record Line(long number, String text, List<String> fields) {
        /** A field without the blanks about it; empty where there is no such column. */
        public String field(int column) {
            return column >= 0 && column < fields.size() ? fields.get(column).strip() : "";
        }

        /** The line as one that does not read. */
        public NotReadLine notRead(NotRead why) {
            return new NotReadLine(number, Excerpt.of(text), why.what(), why.tryThis());
        }
    }

    /** Takes what is read. */
    public interface Taker {
        /**
         * Takes a line with as many fields as the table has columns.
         *
         * @throws NotRead where they do not make an entry; the line is then set down with the reason
         */
        void line(Line line) throws NotRead;

        void notRead(NotReadLine line);
    }

    /** Reads the file. */
    public static TableFile of(InputStream in) throws IOException {
        CsvText text = CsvText.of(in);
        List<Line> lines = text.lines();
        if (lines.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(0)).failure();
        }
        return new TableFile(text, lines);
    }

    /** The first line. */
    public Line header() {
        return header;
    }

    /** The names of the columns. */
    public List<String> names() {
        return header.fields().stream().map(String::strip).toList();
    }

    public Separator separator() {
        return text.separator();
    }

    /**
     * Hands out the other lines.
     *
     * @return the last line, where the file ends without a line end and it reads nevertheless: it may have lost its end
     */
    public Optional<String> read(Taker taker) {
        boolean lastReads = false;
        for (Line line : lines) {
            lastReads = read(line, taker);
        }
        return lastReads && !text.isEnded()
                ? Optional.of(Excerpt.of(lines.get(lines.size() - 1).text()))
                : Optional.empty();
    }

    private boolean read(Line line, Taker taker) {
        try {
            taker.line(new Line(line.number(), line.text(), fields(line)));
            return true;
        } catch (NotRead why) {
            taker.notRead(line.notRead(why));
            return false;
        }
    }

    private List<String> fields(Line line) throws NotRead {
        int columns = header.fields().size();
        List<String> fields = new ArrayList<>(line.fields());
        boolean last = line.number() == lines.get(lines.size() - 1).number();
        if (last && text.isUnclosed(line)) {
            throw new NotRead(Message.of("table.not.unclosed"), Message.of("table.try.unclosed"));
        }
        boolean fewer = fields.size() < columns;
        if (last && fewer && !text.isEnded()) {
            throw new NotRead(Message.of("table.cutOff"), Message.of("table.try.cutOff"));
        }
        boolean more = fields.stream().skip(columns).anyMatch(field -> !field.isBlank());
        if (more || fewer && separator() == Separator.BLANKS) {
            throw new NotRead(
                    Message.of("table.fields", new Count(fields.size()), new Count(columns)),
                    Message.of(more ? "table.try.more" : "table.try.fewer"));
        }
        while (fields.size() < columns) {
            fields.add("");
        }
        return fields;
    }
}
