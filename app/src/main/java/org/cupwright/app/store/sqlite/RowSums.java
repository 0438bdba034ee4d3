package org.cupwright.app.store.sqlite;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.store.CheckedRow;
import org.cupwright.app.store.Sql;
import org.flywaydb.core.api.callback.Callback;
import org.flywaydb.core.api.callback.Context;
import org.flywaydb.core.api.callback.Event;

/** Gives the rows of an older file their check sums, in the transaction of the migration that makes the column. */
final class RowSums implements Callback {
    /** So many rows are in memory at once (our choice). */
    private static final int TOGETHER = 500;

    private record Row(long number, long sum) {}

    @Override
    public boolean supports(Event event, Context context) {
        return event == Event.AFTER_EACH_MIGRATE
                && context.getMigrationInfo().getVersion().getMajor().intValueExact() == Upgrade.SUMS;
    }

    @Override
    public boolean canHandleInTransaction(Event event, Context context) {
        return true;
    }

    @Override
    public void handle(Event event, Context context) {
        Connection connection = context.getConnection();
        List<String> there = new Sql(connection).texts("SELECT name FROM sqlite_schema WHERE type = 'table'");
        FolderContents.NUMBERED.forEach((table, key) -> {
            if (there.contains(table)) { // those of later formats are not made yet
                sumUp(connection, table, key);
            }
        });
    }

    private static void sumUp(Connection connection, String table, String key) {
        Sql sql = new Sql(connection);
        long last = Long.MIN_VALUE;
        List<Row> rows;
        do {
            rows = new ArrayList<>(sql.list(
                    row -> new Row(row.getLong(key), CheckedRow.at(row).sum()),
                    "SELECT * FROM " + table + " WHERE " + key + " > ? ORDER BY " + key + " LIMIT " + TOGETHER,
                    last));
            for (Row row : rows) {
                sql.change(
                        "UPDATE " + table + " SET " + CheckedRow.SUM + " = ? WHERE " + key + " = ?",
                        row.sum(),
                        row.number());
                last = row.number();
            }
        } while (rows.size() == TOGETHER);
    }

    @Override
    public String getCallbackName() {
        return "check sums of rows";
    }
}
