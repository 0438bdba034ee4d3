package org.cupwright.app.desk.entry.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.desk.table.NotRead;
import org.cupwright.app.desk.table.NotReadLine;
import org.cupwright.app.desk.table.TableFile;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/** Reads an old notebook line by line: a table whose first line names date, hole, and on and side or words, in any order. */
final class HistoryFile implements TableFile.Taker {
    private static final List<String> COLUMNS = List.of("date", "hole", "on", "side");

    private final TableFile table;
    private final int[] columns;

    /** Where the place stands in words; none: below zero. */
    private final int words;

    private final Taker taker;

    private HistoryFile(TableFile table, Taker taker) {
        this.table = table;
        this.taker = taker;
        this.words = names(table).indexOf("words");
        this.columns = columns(table, words >= 0);
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

    private static List<String> names(TableFile table) {
        return table.names().stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    }

    private static int[] columns(TableFile table, boolean inWords) {
        List<String> names = names(table);
        List<String> missing = new ArrayList<>(inWords ? COLUMNS.subList(0, 2) : COLUMNS);
        missing.removeAll(names);
        if (!missing.isEmpty()) {
            throw Finding.of(
                            FindingKind.COLUMN_MISSING,
                            Where.line(table.header().number()),
                            new Name(Excerpt.of(table.header().text())))
                    .trying(new Name(String.join(", ", missing)))
                    .failure();
        }
        return COLUMNS.stream().mapToInt(names::indexOf).toArray();
    }

    @Override
    public void line(TableFile.Line line) throws NotRead {
        String said = line.field(words);
        String[] found = new String[columns.length];
        for (int i = 0; i < columns.length; i++) {
            found[i] = line.field(columns[i]);
        }
        boolean inWords = !said.isEmpty() && found[2].isEmpty() && found[3].isEmpty();
        for (int i = 0; i < (inWords ? 2 : columns.length); i++) {
            if (found[i].isEmpty()) {
                String name = i < 2 || words < 0 || !found[5 - i].isEmpty() ? COLUMNS.get(i) : "words";
                throw new NotRead(Message.of("history.empty", new Name(name)), Message.of("history.try.empty"));
            }
        }
        taker.line(
                line,
                inWords
                        ? HistoryLine.inWords(found[0], found[1], said)
                        : HistoryLine.of(found[0], found[1], found[2], found[3], table.separator()));
    }

    @Override
    public void notRead(NotReadLine line) {
        taker.notRead(line);
    }
}
