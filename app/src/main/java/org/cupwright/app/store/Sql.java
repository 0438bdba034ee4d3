package org.cupwright.app.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    private PreparedStatement prepared(String text, Object... arguments) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(text);
        for (int i = 0; i < arguments.length; i++) {
            statement.setObject(i + 1, arguments[i]);
        }
        return statement;
    }
}
