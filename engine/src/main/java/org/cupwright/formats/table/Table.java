package org.cupwright.formats.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.FileBounds;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A table as people and programs write it: the first line names the columns, every other is an entry. Lines that begin
 * with # and those that say nothing are passed over. Lines that cannot be what they seem are refused: those with more
 * fields than the first (decimal commas between commas), and a last one that was cut off.
 */
public final class Table {
    /** Thirty years of eighteen holes a day come to some 50 MB (our choice of bound). */
    private static final long MOST_BYTES = 64L << 20;

    /** A long note with room to spare (our choice): what has longer lines is no table. */
    private static final int LONGEST_LINE = 1 << 16;

    private final String text;
    private final Separator separator;
    private final List<Line> lines;

    private Table(String text, boolean quotedLineEnds) {
        List<String> physical = text.lines().toList();
        this.text = text;
        this.separator =
                Separator.of(physical.stream().filter(Table::says).findFirst().orElse(""));
        this.lines = quotedLineEnds && separator != Separator.BLANKS ? records(physical) : parted(physical);
        if (lines.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(physical.size()))
                    .failure();
        }
        int columns = header().fields().size();
        if (columns > FileBounds.MOST_COLUMNS) {
            throw Finding.of(FindingKind.TOO_MANY_COLUMNS, Where.line(header().number()), columns)
                    .trying(FileBounds.MOST_COLUMNS)
                    .failure();
        }
    }

    /**
     * Reads CSV (RFC 4180) as office programs write it: a field in quotation marks may hold the separator, quotation
     * marks and line ends. Where the first line has no separator, runs of blanks are it.
     *
     * @param in the file; not closed
     * @throws UnreadableFile if it is empty, no text, or beyond the bounds
     */
    public static Table of(InputStream in) throws IOException {
        return new Table(read(in, MOST_BYTES), true);
    }

    /** The same of a table in which a line is a line, whatever quotation marks stand in it. */
    public static Table ofLines(InputStream in, long maxBytes) throws IOException {
        return new Table(read(in, maxBytes), false);
    }

    private static String read(InputStream in, long maxBytes) throws IOException {
        StringWriter text = new StringWriter();
        BoundedInput.text(in, maxBytes).transferTo(text);
        String all = text.toString();
        if (all.indexOf(0) >= 0 || all.lines().anyMatch(line -> line.length() > LONGEST_LINE)) {
            throw notText(Excerpt.of(all));
        }
        if (all.lines().skip(FileBounds.MOST_LINES).findAny().isPresent()) {
            throw Finding.of(FindingKind.TOO_MANY_LINES, Where.file(), FileBounds.MOST_LINES)
                    .failure();
        }
        return all;
    }

    private static UnreadableFile notText(String said) {
        return Finding.of(FindingKind.NOT_TEXT, Where.file(), new Name(said)).failure();
    }

    private static boolean says(String line) {
        return !line.isBlank() && !line.strip().startsWith("#");
    }

    private List<Line> parted(List<String> physical) {
        List<Line> parted = new ArrayList<>();
        for (int i = 0; i < physical.size(); i++) {
            if (says(physical.get(i))) {
                parted.add(new Line(i + 1L, physical.get(i), separator.split(physical.get(i))));
            }
        }
        return parted;
    }

    private List<Line> records(List<String> physical) {
        List<Line> records = new ArrayList<>();
        try {
            for (CsvRecord found : CsvText.reader(separator.character()).ofCsvRecord(text)) {
                if (found.getFields().stream().anyMatch(field -> !field.isBlank())) {
                    long number = found.getStartingLineNumber();
                    String said = physical.get((int) Math.min(number, physical.size()) - 1);
                    records.add(new Line(number, said, found.getFields()));
                }
            }
        } catch (CsvParseException notCsv) {
            throw notText(notCsv.getMessage());
        }
        return records;
    }

    /** The first line. */
    public Line header() {
        return lines.get(0);
    }

    /** The names of the columns. */
    public List<String> names() {
        return header().fields().stream().map(String::strip).toList();
    }

    /** The other lines as they stand there. */
    public List<Line> lines() {
        return lines.subList(1, lines.size());
    }

    public Separator separator() {
        return separator;
    }

    /** The failure of a table that lacks columns. */
    public UnreadableFile without(List<String> columns) {
        return Finding.of(
                        FindingKind.COLUMN_MISSING,
                        Where.line(header().number()),
                        new Name(Excerpt.of(header().text())))
                .trying(new Name(String.join(", ", columns)))
                .failure();
    }

    /**
     * Reads the other lines, each given with as many fields as the table has columns.
     *
     * @param reader makes of a line what it says; where it throws a {@link Problem}, the line is set down with it
     */
    public <T> Reading<T> read(Function<Line, T> reader) {
        Reading<T> reading = new Reading<>();
        boolean lastReads = false;
        for (Line line : lines()) {
            lastReads = read(line, reader, reading);
        }
        if (lastReads && !isEnded()) {
            reading.endsWithin(Excerpt.of(last().text()));
        }
        return reading;
    }

    private <T> boolean read(Line line, Function<Line, T> reader, Reading<T> reading) {
        try {
            Line whole = new Line(line.number(), line.text(), fields(line));
            reading.add(line, reader.apply(whole));
            return true;
        } catch (Problem why) {
            reading.add(line.notRead(why));
            return false;
        }
    }

    private List<String> fields(Line line) {
        int columns = header().fields().size();
        List<String> fields = new ArrayList<>(line.fields());
        boolean last = line.number() == last().number();
        if (last && isUnclosed(line)) {
            throw Problem.of(Message.of("table.not.unclosed"), Message.of("table.try.unclosed"));
        }
        boolean fewer = fields.size() < columns;
        if (last && fewer && !isEnded()) {
            throw Problem.of(Message.of("table.cutOff"), Message.of("table.try.cutOff"));
        }
        boolean more = fields.stream().skip(columns).anyMatch(field -> !field.isBlank());
        if (more || (fewer && separator == Separator.BLANKS)) {
            throw Problem.of(
                    Message.of("table.fields", new Count(fields.size()), new Count(columns)),
                    Message.of(more ? "table.try.more" : "table.try.fewer"));
        }
        while (fields.size() < columns) {
            fields.add("");
        }
        return fields;
    }

    private Line last() {
        return lines.get(lines.size() - 1);
    }

    /** Whether its last line is ended; a file that was cut off ends within one. */
    private boolean isEnded() {
        return text.endsWith("\n");
    }

    /** Whether the last line takes in line ends, and the text does not end with a quotation mark. */
    private boolean isUnclosed(Line last) {
        List<String> fields = last.fields();
        return fields.get(fields.size() - 1).indexOf('\n') >= 0
                && !text.stripTrailing().endsWith("\"");
    }
}
