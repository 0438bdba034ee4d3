package org.cupwright.formats.items;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;

/** A table whose first line names its columns; capitals do not matter. */
final class NamedColumns {
    private final Separator separator;
    private final Map<String, Integer> columns = new HashMap<>();
    private final String header;
    private final long headerLine;

    private NamedColumns(String header, long headerLine) {
        this.header = header;
        this.headerLine = headerLine;
        this.separator = Separator.of(header);
        List<String> names = separator.split(header);
        for (int i = 0; i < names.size(); i++) {
            columns.putIfAbsent(names.get(i).toLowerCase(Locale.ROOT), i);
        }
    }

    static NamedColumns of(String header, long lineNumber) {
        return new NamedColumns(header, lineNumber);
    }

    private boolean has(String name) {
        return columns.containsKey(name.toLowerCase(Locale.ROOT));
    }

    /**
     * @throws UnreadableFile if one of the columns is missing
     */
    void require(String... names) {
        List<String> missing = new ArrayList<>(List.of(names));
        missing.removeIf(this::has);
        failIfAny(missing);
    }

    void requireEither(List<String> these, List<String> orThose) {
        if (!these.stream().allMatch(this::has) && !orThose.stream().allMatch(this::has)) {
            List<String> missing = new ArrayList<>(these);
            missing.addAll(orThose);
            failIfAny(missing);
        }
    }

    private void failIfAny(List<String> missing) {
        if (!missing.isEmpty()) {
            Message.Argument line = new Message.Name(Excerpt.of(header));
            throw Finding.of(FindingKind.COLUMN_MISSING, Where.line(headerLine), line)
                    .trying(new Message.Name(String.join(", ", missing)))
                    .failure();
        }
    }

    /** How many columns the header has. */
    int count() {
        return separator.split(header).size();
    }

    Line line(String text, Message where) {
        return new Line(separator.split(text), where);
    }

    /** One line of the table. */
    final class Line {
        private final List<String> fields;
        private final Message where;

        private Line(List<String> fields, Message where) {
            this.fields = fields;
            this.where = where;
        }

        Message where() {
            return where;
        }

        /** How many fields it has. */
        int fields() {
            return fields.size();
        }

        /** A field; empty where the line or the table does not have it. */
        String text(String name) {
            Integer column = columns.get(name.toLowerCase(Locale.ROOT));
            return column == null || column >= fields.size() ? "" : fields.get(column);
        }

        double number(String name) {
            return numberOf(text(name));
        }

        /**
         * @throws UnreadableFile if it is no number
         */
        double numberOf(String field) {
            double value = separator.number(field);
            if (Double.isNaN(value)) {
                throw trouble(FindingKind.READING_NOT_READABLE, field);
            }
            return value;
        }

        UnreadableFile trouble(FindingKind kind, String value) {
            return Finding.of(kind, where, new Message.Name(Excerpt.of(value))).failure();
        }
    }
}
