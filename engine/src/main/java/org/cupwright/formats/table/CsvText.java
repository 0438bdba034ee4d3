package org.cupwright.formats.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Lines and fields of CSV (RFC 4180) as office programs write and read it. */
public final class CsvText {
    private CsvText() {}

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

    static CsvReader.CsvReaderBuilder reader(char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.SKIP)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true);
    }
}
