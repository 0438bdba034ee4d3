package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.TextLines;
import org.cupwright.message.Message;

/** A table of spots, one a line, each at {@code east,north} or {@code on,side}. */
final class SpotTable {
    private static final long MAX_BYTES = 4L << 20;

    private final TextLines lines;
    private final NamedColumns columns;

    private SpotTable(TextLines lines, NamedColumns columns) {
        this.lines = lines;
        this.columns = columns;
    }

    /**
     * Reads the first line.
     *
     * @param in the file; not closed
     * @param needed the columns it must have beside those of the place
     * @throws org.cupwright.finding.UnreadableFile if the file is empty, no text, or columns are missing
     */
    static SpotTable of(InputStream in, String... needed) throws IOException {
        TextLines lines = new TextLines(in, MAX_BYTES);
        Optional<String> header = lines.next();
        if (header.isEmpty()) {
            throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Message.Count(lines.number()))
                    .failure();
        }
        NamedColumns columns = NamedColumns.of(header.get(), lines.number());
        columns.require(needed);
        columns.requireEither(List.of("east", "north"), List.of("on", "side"));
        return new SpotTable(lines, columns);
    }

    /** How many columns the first line names. */
    int columns() {
        return columns.count();
    }

    /** Reads the other lines. */
    void each(Consumer<NamedColumns.Line> taker) throws IOException {
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            taker.accept(columns.line(line.get(), Where.line(lines.number())));
        }
    }
}
