package org.cupwright.app.store;

import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;

/** Statements with their arguments on one connection. */
public record Sql(Connection connection) {
    /** Reads one row into a value. */
    public interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }

    /** Does something with one row. */
    public interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    public void each(RowTaker taker, String query, Object... arguments) {
        try (PreparedStatement statement = prepared(query, arguments);
                ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                taker.take(rows);
            }
        } catch (SQLException error) {
            throw new SqlFailure(error);
        }
    }

    public <T> List<T> list(Row<T> reader, String query, Object... arguments) {
        List<T> found = new ArrayList<>();
        each(row -> found.add(reader.read(row)), query, arguments);
        return found;
    }

    public <T> Optional<T> find(Row<T> reader, String query, Object... arguments) {
        return list(reader, query, arguments).stream().findFirst();
    }

    /** The texts that a query of one column finds. */
    public List<String> texts(String query, Object... arguments) {
        return list(row -> row.getString(1), query, arguments);
    }

    /** The number that a query of one column and one row answers. */
    public long number(String query, Object... arguments) {
        return find(row -> row.getLong(1), query, arguments).orElseThrow();
    }

    /** Answers how many rows were changed. */
    public int change(String statementText, Object... arguments) {
        try (PreparedStatement statement = prepared(statementText, arguments)) {
            return statement.executeUpdate();
        } catch (SQLException error) {
            throw new SqlFailure(error);
        }
    }

    /**
     * Adds a row with the number after the table's last and with its check sum; answers how many were added.
     *
     * @param key the column of the number
     * @param ending what may end the insertion, as {@link Dialect#unlessThere}; empty where nothing does
     */
    int add(String table, String key, CheckedRow row, String ending) {
        row.with(key, number("SELECT coalesce(max(" + key + "), 0) + 1 FROM " + table));
        List<Object> values = new ArrayList<>(row.columns().values());
        values.add(row.sum());
        return change(
                "INSERT INTO " + table + " (" + String.join(", ", row.columns().keySet()) + ", " + CheckedRow.SUM
                        + ") VALUES (" + String.join(", ", Collections.nCopies(values.size(), "?")) + ")" + ending,
                values.toArray());
    }

    int add(String table, CheckedRow row) {
        return add(table, "id", row, "");
    }

    /** Writes a row anew where a column has a value, with its number and its check sum; answers how many were. */
    int replace(String table, String key, CheckedRow row) {
        Object named = row.columns().get(key);
        row.with("id", number("SELECT id FROM " + table + " WHERE " + key + " = ?", named));
        List<Object> values = new ArrayList<>(row.columns().values());
        values.add(row.sum());
        values.add(named);
        return change(
                "UPDATE " + table + " SET "
                        + String.join(" = ?, ", row.columns().keySet()) + " = ?, " + CheckedRow.SUM + " = ? WHERE "
                        + key + " = ?",
                values.toArray());
    }

    /**
     * Reads rows, of which the query answers all columns.
     *
     * @throws org.cupwright.message.Problem if one of them is not as it was written or cannot be read
     */
    <T> List<T> checked(Row<T> reader, String table, String which, Object... arguments) {
        return list(
                row -> {
                    DamagedRow named = new DamagedRow(table, row.getLong("id"));
                    if (CheckedRow.at(row).sum() != row.getLong(CheckedRow.SUM)) {
                        throw named.problem(new Said(Message.of("row.changed")));
                    }
                    try {
                        return reader.read(row);
                    } catch (IllegalStateException
                            | IllegalArgumentException
                            | UncheckedIOException
                            | DateTimeException unreadable) {
                        throw named.problem(new Name(Documents.why(unreadable)));
                    }
                },
                "SELECT * FROM " + table + " " + which,
                arguments);
    }

    private PreparedStatement prepared(String text, Object... arguments) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(text);
        for (int i = 0; i < arguments.length; i++) {
            statement.setObject(i + 1, arguments[i]);
        }
        return statement;
    }
}
