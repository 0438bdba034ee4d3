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
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message.Name;

/**
 * CSV (RFC 4180) as office programs write it: a field in quotation marks may hold the separator, quotation marks and line ends. Lines
 * that begin with # are passed over. Where a first line has no separator, runs of blanks are it.
 */
public final class CsvText {
    /** Thirty years of eighteen holes a day come to some 50 MB (our choice of bound). */
    private static final long MOST_BYTES = 64L << 20;

    /** A long note with room to spare (our choice): what has longer lines is no table. */
    private static final int LONGEST_LINE = 1 << 16;

    private final String text;
    private final Separator separator;

    private CsvText(String text) {
        this.text = text;
        this.separator =
                Separator.of(text.lines().filter(CsvText::says).findFirst().orElse(""));
    }

    static CsvText of(InputStream in) throws IOException {
        StringWriter text = new StringWriter();
        BoundedInput.text(in, MOST_BYTES).transferTo(text);
        String all = text.toString();
        if (all.indexOf(0) >= 0 || all.lines().anyMatch(line -> line.length() > LONGEST_LINE)) {
            throw Finding.of(FindingKind.NOT_TEXT, Where.file(), new Name(Excerpt.of(all)))
                    .failure();
        }
        return new CsvText(all);
    }

    private static boolean says(String line) {
        return !line.isBlank() && !line.strip().startsWith("#");
    }

    Separator separator() {
        return separator;
    }

    /** Whether its last line is ended; a file that was cut off ends within one. */
    boolean isEnded() {
        return text.endsWith("\n");
    }

    /** Whether the last line takes in line ends, and the text does not end with a quotation mark. */
    boolean isUnclosed(TableFile.Line last) {
        List<String> fields = last.fields();
        return fields.get(fields.size() - 1).indexOf('\n') >= 0
                && !text.stripTrailing().endsWith("\"");
    }

    /** Its lines, those left out that say nothing. */
    List<TableFile.Line> lines() {
        List<String> physical = text.lines().toList();
        return separator == Separator.BLANKS ? parted(physical) : records(physical);
    }

    private List<TableFile.Line> parted(List<String> physical) {
        List<TableFile.Line> lines = new ArrayList<>();
        for (int i = 0; i < physical.size(); i++) {
            if (says(physical.get(i))) {
                lines.add(new TableFile.Line(i + 1L, physical.get(i), separator.split(physical.get(i))));
            }
        }
        return lines;
    }

    private List<TableFile.Line> records(List<String> physical) {
        char between = switch (separator) {
            case SEMICOLON -> ';';
            case TAB -> '\t';
            case COMMA, BLANKS -> ',';
        };
        List<TableFile.Line> lines = new ArrayList<>();
        try {
            for (CsvRecord found : reader(between).ofCsvRecord(text)) {
                if (found.getFields().stream().anyMatch(field -> !field.isBlank())) {
                    long number = found.getStartingLineNumber();
                    String said = physical.get((int) Math.min(number, physical.size()) - 1);
                    lines.add(new TableFile.Line(number, said, found.getFields()));
                }
            }
        } catch (CsvParseException notCsv) {
            throw Finding.of(FindingKind.NOT_TEXT, Where.file(), new Name(notCsv.getMessage()))
                    .failure();
        }
        return lines;
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
