package org.cupwright.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

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

    private static String script(String name) {
        try (InputStream in = EmptyDatabase.class.getResourceAsStream("/db/migration/sqlite/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
