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
import org.cupwright.green.survey.Separator;
import org.cupwright.green.survey.TextLines;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;

/** Reads an old notebook line by line: a table whose first line names date, hole, on and side, in any order. */
final class HistoryFile {
    /** Thirty years of eighteen holes a day come to 5 MB (our choice of bounds). */
    private static final long MOST_BYTES = 16L << 20;

    private static final long MOST_LINES = 400_000;
    private static final List<String> COLUMNS = List.of("date", "hole", "on", "side");

    private HistoryFile() {}

    /** Takes what is read. */
    interface Taker {
        void line(long number, HistoryLine line);

        void notRead(long number, String text, NotRead why);
    }

    static void read(InputStream in, Taker taker) throws IOException {
        TextLines lines = new TextLines(in, MOST_BYTES);
        Optional<String> header = lines.next();
        if (header.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(lines.number()))
                    .failure();
        }
        Separator separator = Separator.of(header.get());
        int[] columns = columns(header.get(), separator, lines.number());
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            if (lines.number() > MOST_LINES) {
                throw Finding.of(FindingKind.FILE_TOO_LARGE, Where.line(lines.number()), new Count(MOST_BYTES))
                        .failure();
            }
            read(line.get(), separator, columns, lines.number(), taker);
        }
    }

    private static int[] columns(String header, Separator separator, long number) {
        List<String> names = separator.split(header).stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList();
        List<String> missing = new ArrayList<>(COLUMNS);
        missing.removeAll(names);
        if (!missing.isEmpty()) {
            throw Finding.of(FindingKind.COLUMN_MISSING, Where.line(number), new Name(Excerpt.of(header)))
                    .trying(new Name(String.join(", ", missing)))
                    .failure();
        }
        return COLUMNS.stream().mapToInt(names::indexOf).toArray();
    }

    private static void read(String text, Separator separator, int[] columns, long number, Taker taker) {
        List<String> fields = separator.split(text);
        try {
            String[] found = new String[columns.length];
            for (int i = 0; i < columns.length; i++) {
                found[i] = columns[i] < fields.size() ? fields.get(columns[i]) : "";
                if (found[i].isEmpty()) {
                    throw new NotRead(
                            Message.of("history.empty", new Name(COLUMNS.get(i))), Message.of("history.try.empty"));
                }
            }
            taker.line(number, HistoryLine.of(found[0], found[1], found[2], found[3], separator));
        } catch (NotRead why) {
            taker.notRead(number, Excerpt.of(text), why);
        }
    }
}
