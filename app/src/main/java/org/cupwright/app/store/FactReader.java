package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.storage.json.UnreadableFact;
import org.cupwright.cupchange.Fact;

/** Reads facts from their documents on other threads while the next documents come from the database. */
final class FactReader {
    /** So many documents are some milliseconds of work (our choice). */
    private static final int CHUNK = 500;

    private final Consumer<DamagedRow> damaged;
    private final List<ForkJoinTask<List<Row>>> begun = new ArrayList<>();
    private List<Row> next = new ArrayList<>(CHUNK);

    /** @param damaged is told of rows that are left out */
    FactReader(Consumer<DamagedRow> damaged) {
        this.damaged = damaged;
    }

    /** A row as it was read, and then the fact it tells; none where it is damaged. */
    private record Row(byte[] document, long number, long sum, Optional<Fact> fact) {
        Row told() {
            if (!CheckedRow.holds(document, sum)) {
                return this;
            }
            try {
                return new Row(null, number, sum, Optional.of(FactJson.read(document)));
            } catch (UnreadableFact written) {
                return this;
            }
        }
    }

    /** Takes a row of the fact's document, the number it was received as, and its check sum. */
    void take(ResultSet row) throws SQLException {
        next.add(new Row(row.getBytes(1), row.getLong(2), row.getLong(3), Optional.empty()));
        if (next.size() == CHUNK) {
            begin();
        }
    }

    private void begin() {
        List<Row> rows = next;
        next = new ArrayList<>(CHUNK);
        begun.add(ForkJoinPool.commonPool()
                .submit(() -> rows.stream().map(Row::told).toList()));
    }

    /** All that were taken, in the order in which they happened. */
    List<Fact> facts() {
        List<Fact> facts = inOrderRead();
        facts.sort(Fact.ORDER);
        return facts;
    }

    List<Fact> inOrderRead() {
        begin();
        List<Fact> facts = new ArrayList<>(CHUNK * begun.size());
        for (ForkJoinTask<List<Row>> chunk : begun) {
            for (Row row : chunk.join()) {
                row.fact().ifPresentOrElse(facts::add, () -> damaged.accept(new DamagedRow("fact", row.number())));
            }
        }
        return facts;
    }
}
