package org.cupwright.app.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The file {@code cupwright.db} of a data folder: opening it, its format version, bringing it up to date. */
final class Database {
    /** The data format this program writes; the newest migration sets it as the file's user_version. */
    static final int FORMAT = 2;

    /** The file's application_id, "CUPW". */
    static final int APPLICATION = 1129664599;

    private static final int BUSY_MILLISECONDS = 5000;

    /** Held so that the level set on it is kept: the log manager forgets loggers that nobody holds. */
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    private final Path file;

    Database(Path folder) {
        this.file = folder.resolve("cupwright.db");
    }

    Path file() {
        return file;
    }

    boolean exists() {
        return Files.exists(file);
    }

    /** Opens the file for reading; it must exist. On a folder that cannot be written it is read as it lies. */
    Connection openToRead() throws SQLException {
        SQLiteConfig config = config();
        boolean asItLies = !Files.isWritable(file.getParent());
        config.setReadOnly(asItLies);
        String url = asItLies ? "jdbc:sqlite:" + file.toUri() + "?immutable=1" : "jdbc:sqlite:" + file;
        Connection connection = config.createConnection(url);
        return checked(connection);
    }

    /** Opens the file for writing, made and brought up to date where needed. */
    Connection openToWrite() throws SQLException {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        if (!upToDate(source)) {
            migrate(source);
        }
        return source.getConnection();
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        return config;
    }

    private boolean upToDate(SQLiteDataSource source) throws SQLException {
        try (Connection connection = source.getConnection()) {
            int version = pragma(connection, "user_version");
            refuseForeign(connection, version);
            return version == FORMAT;
        }
    }

    private Connection checked(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA query_only = true");
            refuseForeign(connection, pragma(connection, "user_version"));
            return connection;
        } catch (SQLException | RuntimeException refused) {
            connection.close();
            throw refused;
        }
    }

    private void refuseForeign(Connection connection, int version) throws SQLException {
        boolean fresh = version == 0 && pragma(connection, "schema_version") == 0;
        if (!fresh && pragma(connection, "application_id") != APPLICATION) {
            throw StoreProblems.notOurs(file);
        }
        if (version > FORMAT) {
            throw StoreProblems.newer(file, version, FORMAT);
        }
    }

    private static void migrate(SQLiteDataSource source) {
        FLYWAY_LOG.setLevel(Level.WARNING);
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration/sqlite")
                .load()
                .migrate();
    }

    private static int pragma(Connection connection, String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery("PRAGMA " + name)) {
            return answer.getInt(1);
        }
    }
}
