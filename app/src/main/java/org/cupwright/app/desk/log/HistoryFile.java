package org.cupwright.app.desk.log;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.green.survey.Excerpt;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/** Reads an old notebook line by line: a table whose first line names date, hole, on and side, in any order. */
final class HistoryFile implements TableFile.Taker {
    private static final List<String> COLUMNS = List.of("date", "hole", "on", "side");

    private final TableFile table;
    private final int[] columns;
    private final Taker taker;

    private HistoryFile(TableFile table, Taker taker) {
        this.table = table;
        this.taker = taker;
        this.columns = columns(table);
    }

    /** Takes what is read. */
    interface Taker {
        void line(TableFile.Line line, HistoryLine entry) throws NotRead;

        void notRead(NotReadLine line);
    }

    /** Reads all lines; what {@link TableFile#read} says of the last. */
    static Optional<String> read(InputStream in, Taker taker) throws IOException {
        TableFile table = TableFile.of(in);
        return table.read(new HistoryFile(table, taker));
    }

    private static int[] columns(TableFile table) {
        List<String> names = table.separator().split(table.header()).stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList();
        List<String> missing = new ArrayList<>(COLUMNS);
        missing.removeAll(names);
        if (!missing.isEmpty()) {
            throw Finding.of(
                            FindingKind.COLUMN_MISSING,
                            Where.line(table.headerLine()),
                            new Name(Excerpt.of(table.header())))
                    .trying(new Name(String.join(", ", missing)))
                    .failure();
        }
        return COLUMNS.stream().mapToInt(names::indexOf).toArray();
    }

    @Override
    public void line(TableFile.Line line) throws NotRead {
        List<String> fields = line.fields();
        String[] found = new String[columns.length];
        for (int i = 0; i < columns.length; i++) {
            found[i] = columns[i] < fields.size() ? fields.get(columns[i]) : "";
            if (found[i].isEmpty()) {
                throw new NotRead(
                        Message.of("history.empty", new Name(COLUMNS.get(i))), Message.of("history.try.empty"));
            }
        }
        taker.line(line, HistoryLine.of(found[0], found[1], found[2], found[3], table.separator()));
    }

    @Override
    public void notRead(NotReadLine line) {
        taker.notRead(line);
    }
}
