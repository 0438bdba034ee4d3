package org.cupwright.app.desk.table;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.survey.Excerpt;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.Separator;
import org.cupwright.green.survey.TextLines;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;

/**
 * A table as people and programs write it: the first line names the columns, every other is an entry. Lines that cannot be what they
 * seem are refused here: those with more fields than the first (decimal commas between commas), and a last one that was cut off.
 */
public final class TableFile {
    /** Fifty years of days, or thirty of eighteen holes a day, come to some 5 MB (our choice of bounds). */
    private static final long MOST_BYTES = 16L << 20;

    private static final long MOST_LINES = 400_000;

    private final TextLines lines;
    private final String header;
    private final Separator separator;
    private final int columns;

    private TableFile(TextLines lines, String header) {
        this.lines = lines;
        this.header = header;
        this.separator = Separator.of(header);
        this.columns = separator.split(header).size();
    }

    /**
     * A line.
     *
     * @param number its number in the file, the first being 1
     * @param text what it says
     * @param fields its fields, of which there may be fewer than the first line names
     */
    public record Line(long number, String text, List<String> fields) {
        /** The line as one that does not read. */
        public NotReadLine notRead(NotRead why) {
            return new NotReadLine(number, Excerpt.of(text), why.what(), why.tryThis());
        }
    }

    /** Takes what is read. */
    public interface Taker {
        /** @throws NotRead where the fields do not make an entry; the line is then set down with the reason */
        void line(Line line) throws NotRead;

        void notRead(NotReadLine line);
    }

    /** Reads the first line. */
    public static TableFile of(InputStream in) throws IOException {
        TextLines lines = new TextLines(in, MOST_BYTES);
        Optional<String> header = lines.next();
        return new TableFile(
                lines,
                header.orElseThrow(() -> Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(lines.number()))
                        .failure()));
    }

    public String header() {
        return header;
    }

    /** The number of the first line, comments before it counted. */
    public long headerLine() {
        return lines.number();
    }

    public Separator separator() {
        return separator;
    }

    /**
     * Reads the other lines.
     *
     * @return the last line, where the file ends without a line end and it reads nevertheless: it may have lost its end
     */
    public Optional<String> read(Taker taker) throws IOException {
        Optional<String> unended = Optional.empty();
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            if (lines.number() > MOST_LINES) {
                throw Finding.of(FindingKind.FILE_TOO_LARGE, Where.line(lines.number()), new Count(MOST_BYTES))
                        .failure();
            }
            boolean ended = lines.lineEnded();
            unended = read(line.get(), taker) && !ended ? line.map(Excerpt::of) : Optional.empty();
        }
        return unended;
    }

    private boolean read(String line, Taker taker) {
        try {
            taker.line(new Line(lines.number(), line, fields(line)));
            return true;
        } catch (NotRead why) {
            taker.notRead(new NotReadLine(lines.number(), Excerpt.of(line), why.what(), why.tryThis()));
            return false;
        }
    }

    private List<String> fields(String line) throws NotRead {
        List<String> fields = separator.split(line);
        if (fields.size() < columns && !lines.lineEnded()) {
            throw new NotRead(Message.of("table.cutOff"), Message.of("table.try.cutOff"));
        }
        boolean more = fields.stream().skip(columns).anyMatch(field -> !field.isEmpty());
        if (more || (separator == Separator.BLANKS && fields.size() < columns)) {
            throw new NotRead(
                    Message.of("table.fields", new Count(fields.size()), new Count(columns)),
                    Message.of(more ? "table.try.more" : "table.try.fewer"));
        }
        return fields;
    }
}
