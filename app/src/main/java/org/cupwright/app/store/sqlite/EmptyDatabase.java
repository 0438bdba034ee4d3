package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.cupwright.app.store.Sql;

/** A database in memory that holds nothing, so that looking into a folder in which there is none makes no file. */
final class EmptyDatabase {
    /** The migrations by which a data file is made, in their order. */
    static final List<String> MIGRATIONS =
            List.of("V1__first.sql", "V2__facts.sql", "V3__drawn.sql", "V4__stretches.sql", "V5__photos.sql");

    private EmptyDatabase() {}

    static Connection open() throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
        try (Statement statement = connection.createStatement()) {
            for (String migration : MIGRATIONS) {
                statement.executeUpdate(script(migration));
            }
            statement.execute("PRAGMA query_only = true");
        }
        return connection;
    }

    /** The tables and indexes that a fresh file has and this one, of the same format, has not or has otherwise. */
    static List<String> missingIn(Connection connection) throws SQLException {
        try (Connection fresh = open()) {
            List<String> found = made(connection);
            return made(fresh).stream()
                    .filter(object -> !found.contains(object))
                    .map(object -> object.substring(0, object.indexOf('\n')))
                    .toList();
        }
    }

    /** Each by its name and how it was made; what the database makes by itself comes with its table. */
    private static List<String> made(Connection connection) {
        return new Sql(connection)
                .texts("SELECT type || ' ' || name || char(10) || sql FROM sqlite_schema WHERE sql IS NOT NULL"
                        + " ORDER BY type || ' ' || name");
    }

    private static String script(String name) {
        try (InputStream in = EmptyDatabase.class.getResourceAsStream("/db/migration/sqlite/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
