package org.cupwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.NameKey;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Said;

/**
 * Replaces a person's name wherever it stands as a name: in rows of people and codes, and within documents. The one
 * place where rows of the logbook and of plans are written anew; their check sums with them.
 */
final class SqlErasure {
    /** So many rows are in memory at once (our choice). */
    private static final int TOGETHER = 500;

    /** Tables whose documents name people, by the column that numbers them. */
    private static final Map<String, String> NAMING = Map.of(
            "fact", "received",
            "plan_version", "id",
            "levels_version", "id",
            "drawn_version", "id",
            "round_version", "id",
            "audit", "id",
            "training", "id");

    private final Sql sql;
    private final String key;
    private final NamesInDocument names;

    SqlErasure(Sql sql, String name, String neutral) {
        this.sql = sql;
        this.key = NameKey.of(name);
        this.names = new NamesInDocument(key, neutral);
    }

    /** Answers how many rows are other than before. */
    int everywhere() {
        int changed = codes();
        for (Map.Entry<String, String> table : NAMING.entrySet()) {
            changed += documents(table.getKey(), table.getValue());
        }
        return changed;
    }

    private int codes() {
        List<KeptCode> named = sql.checked(PeopleRows::code, "sign_in_code", "ORDER BY id").stream()
                .filter(code -> code.name().map(NameKey::of).filter(key::equals).isPresent())
                .toList();
        for (KeptCode code : named) {
            sql.change("DELETE FROM sign_in_code WHERE hash = ?", code.hash());
        }
        return named.size();
    }

    private int documents(String table, String number) {
        int changed = 0;
        long last = 0;
        List<CheckedRow> rows;
        do {
            rows = sql.list(
                    row -> sound(table, number, row),
                    "SELECT * FROM " + table + " WHERE " + number + " > ? ORDER BY " + number + " LIMIT " + TOGETHER,
                    last);
            for (CheckedRow row : rows) {
                last = ((Number) row.columns().get(number)).longValue();
                changed += replaced(table, number, row);
            }
        } while (rows.size() == TOGETHER);
        return changed;
    }

    /** A damaged row would look sound with a new sum, and who is named in it cannot be known. */
    private static CheckedRow sound(String table, String number, ResultSet row) throws SQLException {
        CheckedRow read = CheckedRow.at(row);
        if (read.sum() != row.getLong(CheckedRow.SUM)) {
            throw new DamagedRow(table, row.getLong(number)).problem(new Said(Message.of("row.changed")));
        }
        return read;
    }

    private int replaced(String table, String number, CheckedRow row) {
        String document = (String) row.columns().get("document");
        return names.replacedIn(document)
                .map(neutral -> {
                    row.with("document", neutral);
                    return sql.change(
                            "UPDATE " + table + " SET document = ?, " + CheckedRow.SUM + " = ? WHERE " + number
                                    + " = ?",
                            neutral,
                            row.sum(),
                            row.columns().get(number));
                })
                .orElse(0);
    }
}
