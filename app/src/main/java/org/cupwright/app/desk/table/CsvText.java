package org.cupwright.app.desk.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.survey.BoundedInput;
import org.cupwright.green.survey.Excerpt;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.Separator;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;

/**
 * CSV (RFC 4180) as office programs write it: a field in quotation marks may hold the separator, quotation marks and line ends. Lines
 * that begin with # are passed over.
 */
public final class CsvText {
    /** Thirty years of eighteen holes a day come to some 50 MB (our choice of bound). */
    private static final long MOST_BYTES = 64L << 20;

    private CsvText() {}

    /**
     * A table.
     *
     * @param header what its first line says
     * @param lines the others, by the number of the line in which they begin; empty ones left out
     * @param unended whether the file ends within its last line
     * @param unclosed whether the last line takes in line ends and the file does not end with a quotation mark
     */
    public record Table(TableFile.Line header, List<TableFile.Line> lines, boolean unended, boolean unclosed) {
        private boolean isLast(TableFile.Line line) {
            return line.number() == lines.get(lines.size() - 1).number();
        }
    }

    /** Lines of fields as one text, each line ended. */
    public static String write(List<List<String>> lines) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            lines.forEach(writer::writeRecord);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // nothing is written but memory
        }
        return text.toString();
    }

    /** Items with commas between, in one field. */
    public static String joined(List<String> items) {
        String line = write(List.of(items.stream().map(CellText::guarded).toList()));
        return line.substring(0, line.length() - LineDelimiter.CRLF.toString().length());
    }

    /** The items of a field; those without letters are none. */
    public static List<String> items(String field) {
        List<String> items = new ArrayList<>();
        CsvReader.CsvReaderBuilder reader = reader(',').commentStrategy(CommentStrategy.NONE);
        reader.ofCsvRecord(field)
                .forEach(found -> found.getFields().stream()
                        .filter(item -> !item.isBlank())
                        .map(CellText::plain)
                        .forEach(items::add));
        return items;
    }

    public static Table read(InputStream in) throws IOException {
        String text = text(in);
        char separator = separator(text);
        List<TableFile.Line> lines = new ArrayList<>();
        try {
            for (CsvRecord found : reader(separator).ofCsvRecord(text)) {
                if (found.getFields().stream().anyMatch(field -> !field.isBlank())) {
                    String said = String.join(String.valueOf(separator), found.getFields());
                    lines.add(new TableFile.Line(found.getStartingLineNumber(), said, found.getFields()));
                }
            }
        } catch (CsvParseException notCsv) {
            throw Finding.of(FindingKind.NOT_TEXT, Where.file(), new Name(notCsv.getMessage()))
                    .failure();
        }
        if (lines.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(0)).failure();
        }
        List<String> last = lines.get(lines.size() - 1).fields();
        boolean unclosed = last.get(last.size() - 1).indexOf('\n') >= 0
                && !text.stripTrailing().endsWith("\"");
        return new Table(lines.get(0), lines.subList(1, lines.size()), !text.endsWith("\n"), unclosed);
    }

    /** The fields of a line, as many as the table has columns. */
    public static List<String> fields(TableFile.Line line, Table table) throws NotRead {
        int columns = table.header().fields().size();
        List<String> fields = new ArrayList<>(line.fields());
        boolean last = table.isLast(line);
        if (last && table.unclosed()) {
            throw new NotRead(Message.of("table.not.unclosed"), Message.of("table.try.unclosed"));
        }
        if (last && table.unended() && fields.size() < columns) {
            throw new NotRead(Message.of("table.cutOff"), Message.of("table.try.cutOff"));
        }
        if (fields.stream().skip(columns).anyMatch(field -> !field.isBlank())) {
            throw new NotRead(
                    Message.of("table.fields", new Count(fields.size()), new Count(columns)),
                    Message.of("table.try.more"));
        }
        while (fields.size() < columns) {
            fields.add("");
        }
        return fields;
    }

    /** The last line of a file that ends within it. */
    public static Optional<String> unended(Table table) {
        return table.unended() && !table.lines().isEmpty()
                ? Optional.of(
                        Excerpt.of(table.lines().get(table.lines().size() - 1).text()))
                : Optional.empty();
    }

    private static String text(InputStream in) throws IOException {
        StringWriter text = new StringWriter();
        BoundedInput.text(in, MOST_BYTES).transferTo(text);
        int nothing = text.getBuffer().indexOf("\0");
        if (nothing >= 0) {
            throw Finding.of(FindingKind.NOT_TEXT, Where.file(), new Name(Excerpt.of(text.toString())))
                    .failure();
        }
        return text.toString();
    }

    private static char separator(String text) {
        String first = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        return switch (Separator.of(first)) {
            case SEMICOLON -> ';';
            case TAB -> '\t';
            case COMMA, BLANKS -> ',';
        };
    }

    private static CsvReader.CsvReaderBuilder reader(char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true);
    }
}
