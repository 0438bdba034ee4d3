package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingStore;

/** Records of training, a document each. */
public record SqlTraining(Sql sql, Dialect dialect, Clock clock) implements TrainingStore {
    private static final String TABLE = "training";

    @Override
    public void add(TrainingRecord record) {
        TrainingRecord kept = record.receivedAt(clock.instant());
        sql.add(
                TABLE,
                "id",
                new CheckedRow()
                        .with("entry", kept.id().toString())
                        .with("decides", kept.learnt().decides() ? 1 : 0)
                        .with("document", Documents.write(kept)),
                dialect.unlessThere("entry"));
    }

    @Override
    public Optional<TrainingRecord> find(UUID id) {
        return records("WHERE entry = ?", id.toString()).stream().findFirst();
    }

    @Override
    public List<TrainingRecord> decisions() {
        return records("WHERE decides = 1 ORDER BY id");
    }

    @Override
    public List<TrainingRecord> all() {
        return records("ORDER BY id");
    }

    private List<TrainingRecord> records(String which, Object... arguments) {
        return sql.checked(SqlTraining::record, TABLE, which, arguments);
    }

    /** A row of {@code training}: its columns are there for asking, and must say what its document says. */
    public static TrainingRecord record(ResultSet row) throws SQLException {
        TrainingRecord record = Documents.read(row.getString("document"), TrainingRecord.class);
        boolean same = record.id().toString().equals(row.getString("entry"))
                && record.learnt().decides() == row.getBoolean("decides");
        if (!same) {
            throw new IllegalStateException("its columns and its document disagree");
        }
        return record;
    }
}
