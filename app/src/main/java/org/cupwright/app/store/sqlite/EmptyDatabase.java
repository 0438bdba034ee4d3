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
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.zip.CRC32;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlFailure;

/** A database in memory that holds nothing, so that looking into a folder in which there is none makes no file. */
final class EmptyDatabase {
    /** The migrations by which a data file is made, in their order. */
    static final List<String> MIGRATIONS = List.of(
            "V1__first.sql",
            "V2__facts.sql",
            "V3__drawn.sql",
            "V4__stretches.sql",
            "V5__photos.sql",
            "V6__sums.sql",
            "V7__kind.sql",
            "V8__people.sql",
            "V9__setup.sql",
            "V10__shared.sql",
            "V11__phones.sql",
            "V12__round.sql",
            "V13__training.sql");

    /** What Flyway makes beside, to write down in which migrations were done. */
    static final List<String> HISTORY = List.of("index flyway_schema_history_s_idx", "table flyway_schema_history");

    private EmptyDatabase() {}

    static Connection open() throws SQLException {
        return open(MIGRATIONS.size());
    }

    private static Connection open(int format) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
        try (Statement statement = connection.createStatement()) {
            for (String migration : MIGRATIONS.subList(0, format)) {
                statement.executeUpdate(script(migration));
            }
            statement.execute("PRAGMA query_only = true");
        }
        return connection;
    }

    /**
     * What a file of a format has otherwise than a fresh one: tables and indexes that are missing or not as the
     * migrations make them, anything that is there beside, and migrations that are not written down as done.
     */
    static List<String> differences(Connection connection, int format) throws SQLException {
        try (Connection fresh = open(format)) {
            SortedSet<String> found = made(connection);
            SortedSet<String> wanted = made(fresh);
            SortedSet<String> named = new TreeSet<>(HISTORY);
            wanted.stream().filter(object -> !found.contains(object)).forEach(object -> named.add(name(object)));
            found.stream().filter(object -> !wanted.contains(object)).forEach(object -> named.add(name(object)));
            List<String> history = found.stream()
                    .map(EmptyDatabase::name)
                    .filter(HISTORY::contains)
                    .toList();
            named.removeAll(history);
            if (history.size() == HISTORY.size() && !written(connection).equals(done(format))) {
                named.add(HISTORY.get(1));
            }
            return List.copyOf(named);
        }
    }

    /**
     * Whether a file that calls itself newer has a newer program's migrations written down, or none that can be read.
     * Where its last is one of ours, the number alone is wrong.
     */
    static boolean goesBeyond(Connection connection, int format) {
        try {
            return new Sql(connection).number("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history")
                    > format;
        } catch (SqlFailure unreadable) {
            return true;
        }
    }

    /** Each by its name and how it was made; what the database makes by itself comes with its table. */
    private static SortedSet<String> made(Connection connection) {
        return new TreeSet<>(new Sql(connection)
                .texts("SELECT type || ' ' || name || char(10) || sql FROM sqlite_schema WHERE sql IS NOT NULL"));
    }

    private static String name(String object) {
        return object.substring(0, object.indexOf('\n'));
    }

    /** Migrations as Flyway wrote them down. */
    private static List<String> written(Connection connection) {
        return new Sql(connection)
                .texts("SELECT version || ' ' || script || ' ' || checksum || ' ' || success"
                        + " FROM flyway_schema_history ORDER BY installed_rank");
    }

    private static List<String> done(int format) {
        return MIGRATIONS.subList(0, format).stream()
                .map(migration ->
                        migration.substring(1, migration.indexOf('_')) + " " + migration + " " + sum(migration) + " 1")
                .toList();
    }

    /** As Flyway sums a script up: its lines without their ends. */
    private static int sum(String migration) {
        CRC32 sum = new CRC32();
        script(migration).lines().forEach(line -> sum.update(line.getBytes(StandardCharsets.UTF_8)));
        return (int) sum.getValue();
    }

    private static String script(String name) {
        try (InputStream in = EmptyDatabase.class.getResourceAsStream("/db/migration/sqlite/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
